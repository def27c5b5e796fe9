package org.hearthway.pump.internal;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Check;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.PumpOutlook.Explanation;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Quantity;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps the books of pumps. Numbers are part of the keys, so of two who write or check at once one wins. */
@Repository
class EntryRows {

    private static final int VOLUME_PLACES = 4;
    private static final int FLOW_PLACES = 6;
    private static final int AMOUNT_PLACES = 3;
    private static final int LENGTH_PLACES = 2;

    private static final String ALL = """
            select e.*, c.checked_by, c.checked_at, i.pump_kind, i.reservoir, i.alarm_volume, i.tubing, i.least_flow,
              i.most_flow, i.life_months, i.fixed_flow as made_flow, i.catheter_length, i.per_length,
              r.drug, r.lot, r.expires_on, r.look, r.attempts, r.watched_from, r.watched_until, r.read_again, r.done_by,
              r.note
            from pump_entry e
              left join pump_check c on c.child_id = e.child_id and c.entry_number = e.entry_number
              left join pump_implant i on i.child_id = e.child_id and i.entry_number = e.entry_number
              left join pump_refill r on r.child_id = e.child_id and r.entry_number = e.entry_number
            where e.child_id = ? order by e.entry_number
            """;

    private final JdbcClient jdbc;
    private final DosingRows dosings;

    EntryRows(JdbcClient jdbc, DosingRows dosings) {
        this.jdbc = jdbc;
        this.dosings = dosings;
    }

    /** The book of a child, the first entry first. */
    List<PumpEntry> of(ChildId child) {
        var schedules = dosings.of(child);
        return jdbc.sql(ALL)
                .param(child.value())
                .query((row, n) -> entry(row, schedules))
                .list();
    }

    /** The children who are there and of whose pump something is written. */
    Set<ChildId> children() {
        return jdbc
                .sql("select distinct child_id from pump_entry where child_id in (select id from child_present)")
                .query(UUID.class)
                .stream()
                .map(ChildId::new)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The last number of a child's book, 0 when nothing is written. */
    long last(ChildId child) {
        return jdbc.sql("select coalesce(max(entry_number), 0) from pump_entry where child_id = ?")
                .param(child.value())
                .query(Long.class)
                .single();
    }

    /** Adds an entry. @throws Overtaken when its number is taken */
    void add(ChildId child, PumpEntry entry) {
        var what = entry.what();
        var setting = what.setting();
        var refill = what instanceof PumpEntry.Refill one ? Optional.of(one) : Optional.<PumpEntry.Refill>empty();
        try {
            jdbc.sql("""
                            insert into pump_entry (child_id, entry_number, kind, done_at, corrects, correction,
                              emergency, unusual, carried, strength, dosing, daily_dose, fixed_flow, withdrawn,
                              left_behind, injected, measured, beyond_use, printed_alarm, margin_days, reason, entered_by, entered_at)
                            values (:child, :number, :kind, :at, :corrects, :correction, :emergency, :unusual, false,
                              :strength, :dosing, :dose, :flow, :withdrawn, :left, :injected, :measured, :beyond, :printed,
                              :margin, :reason, :by, :entered)
                            """)
                    .param("child", child.value())
                    .param("number", entry.number())
                    .param("kind", entry.kind().name())
                    .param("at", entry.at().atOffset(ZoneOffset.UTC))
                    .param("corrects", entry.corrects().map(Correction::entry).orElse(null))
                    .param(
                            "correction",
                            entry.corrects().map(Correction::reason).orElse(""))
                    .param("emergency", entry.emergency())
                    .param("unusual", entry.unusual())
                    .param("strength", amount(setting.map(Setting::strength), AMOUNT_PLACES))
                    .param("dosing", setting.map(set -> kind(set.dosing())).orElse(null))
                    .param("dose", amount(setting.flatMap(set -> constant(set.dosing())), AMOUNT_PLACES))
                    .param(
                            "flow",
                            amount(setting.flatMap(set -> fixed(set.dosing())).map(FlowRate::perDay), FLOW_PLACES))
                    .param("withdrawn", amount(refill.flatMap(PumpEntry.Refill::withdrawn), VOLUME_PLACES))
                    .param("left", amount(refill.flatMap(PumpEntry.Refill::left), VOLUME_PLACES))
                    .param("injected", amount(refill.flatMap(PumpEntry.Refill::injected), VOLUME_PLACES))
                    .param("measured", amount(refill.flatMap(PumpEntry.Refill::measured), VOLUME_PLACES))
                    .param("beyond", refill.flatMap(PumpEntry.Refill::beyondUse).orElse(null))
                    .param("printed", what.printedAlarm().orElse(null))
                    .param("margin", refill.map(PumpEntry.Refill::marginDays).orElse(null))
                    .param("reason", what instanceof Change change ? change.reason() : "")
                    .param("by", entry.by().value())
                    .param("entered", entry.entered().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        setting.ifPresent(set -> dosings.add(child, entry.number(), set.dosing()));
        refill.ifPresent(one -> add(child, entry.number(), one.details()));
        if (what instanceof Implant implant) {
            add(child, entry.number(), implant);
        }
    }

    private void add(ChildId child, long number, Implant implant) {
        var model = implant.model();
        jdbc.sql("""
                        insert into pump_implant (child_id, entry_number, pump_kind, reservoir, alarm_volume, tubing,
                          least_flow, most_flow, life_months, fixed_flow, catheter_length, per_length)
                        values (:child, :number, :kind, :reservoir, :alarm, :tubing, :least, :most, :life, :fixed, :length,
                          :bore)
                        """)
                .param("child", child.value())
                .param("number", number)
                .param("kind", implant.kind())
                .param("reservoir", model.reservoir().rounded(VOLUME_PLACES))
                .param("alarm", model.alarm().rounded(VOLUME_PLACES))
                .param("tubing", model.tubing().rounded(VOLUME_PLACES))
                .param("least", model.deliverable().least().perDay().rounded(FLOW_PLACES))
                .param("most", model.deliverable().most().perDay().rounded(FLOW_PLACES))
                .param("life", model.life().toTotalMonths())
                .param("fixed", amount(model.fixedFlow().map(FlowRate::perDay), FLOW_PLACES))
                .param("length", amount(implant.catheter().implanted(), LENGTH_PLACES))
                .param("bore", amount(implant.catheter().bore(), FLOW_PLACES))
                .update();
    }

    private void add(ChildId child, long number, RefillDetails details) {
        jdbc.sql("""
                        insert into pump_refill (child_id, entry_number, drug, lot, expires_on, look, attempts,
                          watched_from, watched_until, read_again, done_by, note)
                        values (:child, :number, :drug, :lot, :expires, :look, :attempts, :from, :until, :read, :by, :note)
                        """)
                .param("child", child.value())
                .param("number", number)
                .param("drug", details.drug())
                .param("lot", details.lot())
                .param("expires", details.expires().orElse(null))
                .param("look", details.look())
                .param("attempts", details.attempts())
                .param("from", details.watched().map(RefillDetails.Watch::from).orElse(null))
                .param(
                        "until",
                        details.watched().map(RefillDetails.Watch::until).orElse(null))
                .param("read", details.readAgain())
                .param("by", details.doneBy())
                .param("note", details.note())
                .update();
    }

    void check(ChildId child, long number, Check check) {
        try {
            jdbc.sql("insert into pump_check (child_id, entry_number, checked_by, checked_at) values (?, ?, ?, ?)")
                    .params(
                            child.value(),
                            number,
                            check.by().value(),
                            check.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException checked) {
            throw new Overtaken();
        }
    }

    void explain(ChildId child, long number, Explanation said) {
        jdbc.sql("insert into pump_explained (child_id, entry_number, words, said_by, said_at) values (?, ?, ?, ?, ?)")
                .params(
                        child.value(),
                        number,
                        said.words(),
                        said.by().value(),
                        said.at().atOffset(ZoneOffset.UTC))
                .update();
    }

    /** What was said last about the print-out of each entry. */
    Map<Long, Explanation> explained(ChildId child) {
        var all = new HashMap<Long, Explanation>();
        jdbc.sql("select entry_number, words, said_by, said_at from pump_explained where child_id = ? order by said_at")
                .param(child.value())
                .query(row -> {
                    all.put(
                            row.getLong("entry_number"),
                            new Explanation(
                                    row.getString("words"),
                                    new AccountId(row.getObject("said_by", UUID.class)),
                                    instant(row, "said_at")));
                });
        return all;
    }

    private static @org.jspecify.annotations.Nullable BigDecimal amount(
            Optional<? extends Quantity> quantity, int places) {
        return quantity.map(one -> one.rounded(places)).orElse(null);
    }

    private static String kind(Dosing dosing) {
        if (dosing instanceof Dosing.Cycle) {
            return "CYCLE";
        }
        if (dosing instanceof Dosing.Week) {
            return "WEEK";
        }
        if (dosing instanceof Dosing.FixedFlow) {
            return "FIXED";
        }
        return dosing instanceof Dosing.Stopped ? "STOPPED" : "CONSTANT";
    }

    private static Optional<DailyDose> constant(Dosing dosing) {
        return dosing instanceof Dosing.Constant constant ? Optional.of(constant.dose()) : Optional.empty();
    }

    /** Flows are kept as they are typed, in mL a day: of an hour they could not be kept exactly. */
    private static FlowRate flow(BigDecimal millilitresPerDay) {
        return FlowRate.millilitresPerDay(millilitresPerDay.toPlainString());
    }

    private static Optional<FlowRate> fixed(Dosing dosing) {
        return dosing instanceof Dosing.FixedFlow flow ? Optional.of(flow.flow()) : Optional.empty();
    }

    private static PumpEntry entry(ResultSet row, Map<Long, Map<Integer, DayPattern>> schedules) throws SQLException {
        var number = row.getLong("entry_number");
        var setting = setting(row, schedules.getOrDefault(number, Map.of()));
        var what = switch (row.getString("kind")) {
            case "IMPLANT" -> implant(row);
            case "CHANGE" -> new Change(setting.orElseThrow(), row.getString("reason"), day(row, "printed_alarm"));
            default -> refill(row, setting);
        };
        var corrects = row.getObject("corrects", Long.class);
        var checkedBy = row.getObject("checked_by", UUID.class);
        return new PumpEntry(
                number,
                instant(row, "done_at"),
                what,
                Optional.ofNullable(corrects).map(entry -> new Correction(entry, text(row, "correction"))),
                row.getBoolean("emergency"),
                row.getString("unusual"),
                new AccountId(row.getObject("entered_by", UUID.class)),
                instant(row, "entered_at"),
                checkedBy == null
                        ? Optional.empty()
                        : Optional.of(new Check(new AccountId(checkedBy), instant(row, "checked_at"))),
                row.getBoolean("carried"));
    }

    private static Optional<Setting> setting(ResultSet row, Map<Integer, DayPattern> days) throws SQLException {
        var kind = row.getString("dosing");
        if (kind == null) {
            return Optional.empty();
        }
        var dosing = switch (kind) {
            case "CYCLE" -> DosingRows.cycle(days);
            case "WEEK" -> DosingRows.week(days);
            case "STOPPED" -> Dosing.stopped();
            case "FIXED" -> Dosing.fixedFlow(flow(row.getBigDecimal("fixed_flow")));
            default -> Dosing.constant(new DailyDose(row.getBigDecimal("daily_dose")));
        };
        return Optional.of(new Setting(new Concentration(row.getBigDecimal("strength")), dosing));
    }

    private static Implant implant(ResultSet row) throws SQLException {
        return new Implant(
                row.getString("pump_kind"),
                new PumpModel(
                        Volume.millilitres(row.getBigDecimal("reservoir")),
                        Volume.millilitres(row.getBigDecimal("alarm_volume")),
                        Volume.millilitres(row.getBigDecimal("tubing")),
                        new FlowRange(flow(row.getBigDecimal("least_flow")), flow(row.getBigDecimal("most_flow"))),
                        Period.ofMonths(row.getInt("life_months")),
                        Optional.ofNullable(row.getBigDecimal("made_flow")).map(EntryRows::flow)),
                new Catheter(
                        Optional.ofNullable(row.getBigDecimal("catheter_length"))
                                .map(Length::centimetres),
                        Optional.ofNullable(row.getBigDecimal("per_length"))
                                .map(VolumePerLength::millilitresPerCentimetre)));
    }

    private static PumpEntry.Refill refill(ResultSet row, Optional<Setting> setting) throws SQLException {
        var from = row.getObject("watched_from", LocalDateTime.class);
        var until = row.getObject("watched_until", LocalDateTime.class);
        return new PumpEntry.Refill(
                row.getString("kind").equals("ELSEWHERE"),
                new RefillDetails(
                        row.getString("drug"),
                        row.getString("lot"),
                        day(row, "expires_on"),
                        row.getString("look"),
                        row.getInt("attempts"),
                        from == null || until == null
                                ? Optional.empty()
                                : Optional.of(new RefillDetails.Watch(from, until)),
                        row.getBoolean("read_again"),
                        row.getString("done_by"),
                        row.getString("note")),
                volume(row, "withdrawn"),
                volume(row, "left_behind"),
                volume(row, "injected"),
                volume(row, "measured"),
                day(row, "beyond_use"),
                setting,
                day(row, "printed_alarm"),
                row.getInt("margin_days"));
    }

    private static Optional<Volume> volume(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getBigDecimal(column)).map(Volume::millilitres);
    }

    private static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, LocalDate.class));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static String text(ResultSet row, String column) {
        try {
            return row.getString(column);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
