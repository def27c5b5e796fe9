package org.hearthway.pump.ui;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.PumpBook.Line;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Check;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.PumpOutlook.Explanation;
import org.hearthway.pump.PumpOutlook.Found;
import org.hearthway.pump.Refill;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Filling;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.Program;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.ReplacementPlan;
import org.hearthway.pump.engine.Reservoir;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.Volume;

/** A pump of 20 mL that was filled on January 15, 2026, 10:00 in New York, and what became of it. */
final class PumpStory {

    static final ZoneId ZONE = ZoneId.of("America/New_York");

    static final ClinicSettings CLINIC = new ClinicSettings(
            "Clinic",
            "Clinic",
            "clinic@clinic.example",
            ZONE,
            "555-0100",
            "555-0121",
            "555-0122",
            Set.of(DayOfWeek.MONDAY),
            LocalTime.of(8, 0),
            LocalTime.of(17, 0),
            "https://clinic.example",
            false);

    private static final Instant FILLED = Instant.parse("2026-01-15T15:00:00Z");
    private static final AccountId NURSE = AccountId.random();
    private static final AccountId PHYSICIAN = AccountId.random();
    private static final ClinicRules RULES = ClinicRules.usual();
    private static final Concentration STRENGTH = Concentration.microgramsPerMillilitre("500");

    private Instant now = Instant.parse("2026-03-12T13:40:00Z");
    private Dosing dosing = Dosing.constant("120");
    private Optional<FlowRate> fixed = Optional.empty();
    private LocalDate printed = LocalDate.of(2026, 3, 31);
    private boolean figures = true;
    private boolean filled = true;
    private boolean mayRecord = true;
    private boolean waits;
    private Optional<LocalDate> unfilled = Optional.empty();
    private Optional<LocalDate> takenOut = Optional.empty();
    private Optional<Explanation> explained = Optional.empty();
    private Optional<Volume> found = Optional.empty();
    private final List<Line> later = new ArrayList<>();
    private Optional<Long> superseded = Optional.empty();

    PumpStory at(Instant moment) {
        now = moment;
        return this;
    }

    PumpStory set(Dosing other) {
        dosing = other;
        return this;
    }

    PumpStory fixedRate(FlowRate flow) {
        fixed = Optional.of(flow);
        dosing = Dosing.fixedFlow(flow);
        return this;
    }

    PumpStory printed(LocalDate alarm) {
        printed = alarm;
        return this;
    }

    PumpStory explained(String why) {
        explained = Optional.of(new Explanation(why, NURSE, now));
        return this;
    }

    PumpStory withoutFigures() {
        figures = false;
        return this;
    }

    PumpStory withoutFill() {
        filled = false;
        return this;
    }

    PumpStory unfilled(LocalDate since) {
        unfilled = Optional.of(since);
        return this;
    }

    PumpStory takenOut(LocalDate on) {
        takenOut = Optional.of(on);
        return this;
    }

    PumpStory lookedAtByOthers() {
        mayRecord = false;
        return this;
    }

    /** A refill of today with 17.4 mL that nobody has checked. */
    PumpStory refillWaits(boolean own) {
        waits = true;
        later.clear();
        later.add(line(3, refill(now, "17.4", 3, Optional.empty(), false), own, true, Optional.empty()));
        return this;
    }

    /** Today's refill with so much drawn out. */
    PumpStory found(String millilitres) {
        found = Optional.of(Volume.millilitres(millilitres));
        return this;
    }

    /** The refill was corrected by an emergency entry. */
    PumpStory superseded(String reason) {
        superseded = Optional.of(3L);
        later.add(line(
                3,
                refill(FILLED, "20", 3, Optional.of(new Correction(2, reason)), true),
                true,
                false,
                Optional.empty()));
        return this;
    }

    private PumpModel model() {
        var range = new FlowRange(FlowRate.millilitresPerDay("0.024"), FlowRate.millilitresPerDay("24"));
        return new PumpModel(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                fixed.map(flow -> new FlowRange(flow, flow)).orElse(range),
                Period.ofYears(7),
                fixed);
    }

    private PumpEntry refill(
            Instant at, String injected, long number, Optional<Correction> corrects, boolean emergency) {
        var what = new PumpEntry.Refill(
                false,
                RefillDetails.NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Volume.millilitres(injected)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Setting(STRENGTH, dosing)),
                Optional.of(printed),
                RULES.refill().marginDays());
        return new PumpEntry(
                number,
                at,
                what,
                corrects,
                emergency,
                "",
                NURSE,
                at,
                waits && number > 2 ? Optional.empty() : Optional.of(new Check(PHYSICIAN, at)),
                false);
    }

    private static Line line(long number, PumpEntry entry, boolean seen, boolean waiting, Optional<Long> by) {
        return new Line(
                number,
                entry.at(),
                entry.kind(),
                NURSE,
                entry.entered(),
                entry.emergency(),
                waiting,
                by,
                seen ? Optional.of(entry) : Optional.empty());
    }

    PumpReading reading() {
        var fill = refill(FILLED, "20", 2, Optional.empty(), false);
        var reservoir = Reservoir.filled(
                model(), Filling.of(FILLED, Volume.millilitres("20")), Program.set(FILLED, ZONE, STRENGTH, dosing));
        var forecast = RefillForecast.of(reservoir, RULES.refill(), ZONE, day -> true);
        var window = RefillWindow.of(
                LocalDate.of(2026, 1, 15),
                figures ? forecast.planningDay() : Optional.empty(),
                Optional.of(printed),
                Optional.empty(),
                RULES.refill(),
                day -> true);
        var known = figures && filled;
        var outlook = new PumpOutlook(
                figures
                        ? Optional.of(new Implant("small", model(), new Catheter(Optional.empty(), Optional.empty())))
                        : Optional.empty(),
                filled ? Optional.of(fill) : Optional.empty(),
                filled ? Optional.of(new Setting(STRENGTH, dosing)) : Optional.empty(),
                known ? Optional.of(reservoir) : Optional.empty(),
                known ? Optional.of(forecast) : Optional.empty(),
                filled ? Optional.of(window) : Optional.empty(),
                explained.isEmpty()
                        && window.printOut().filter(PrintOutCheck::flagged).isPresent(),
                explained,
                known ? reservoir.last().program().shift(now, ZONE) : Optional.empty(),
                known
                        ? Optional.of(
                                ReplacementPlan.of(LocalDate.of(2023, 5, 2), Period.ofYears(7), RULES.replacement()))
                        : Optional.empty(),
                found.map(volume -> List.of(new Found(
                                3, LocalDate.of(2026, 3, 12), Residual.at(reservoir, now, volume, RULES.residual()))))
                        .orElse(List.of()));
        var history = new ArrayList<>(later);
        if (filled) {
            history.add(line(2, fill, true, false, superseded));
        }
        return new PumpReading(
                ChildId.random(),
                outlook,
                history,
                filled
                        ? Optional.of(new Refill(LocalDate.of(2026, 3, 12), Optional.of(window), waits))
                        : Optional.empty(),
                unfilled,
                takenOut,
                List.of(),
                RULES,
                day -> true,
                people(),
                mayRecord,
                now,
                LocalDate.ofInstant(now, ZONE));
    }

    private static Map<AccountId, Account> people() {
        return Map.of(NURSE, account(NURSE, "Nurse One"), PHYSICIAN, account(PHYSICIAN, "Doctor Two"));
    }

    private static Account account(AccountId id, String name) {
        return new Account(
                id, name, "somebody@clinic.example", "", Set.of(Role.NURSE), Language.EN, ZONE, Account.State.ACTIVE);
    }
}
