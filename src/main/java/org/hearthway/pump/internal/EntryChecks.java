package org.hearthway.pump.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpRules;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Volume;

/** What an entry must keep to, beyond the bounds of each quantity. Says all that is wrong at once. */
final class EntryChecks {

    /** Most characters of words. */
    static final int WORDS_MOST = 500;

    private static final int YEARS_BACK = 20;
    private static final int YEARS_AHEAD = 10;
    private static final int LONG_MOST = 200;
    private static final int NAME_MOST = 120;
    private static final int LOT_MOST = 60;
    private static final int ATTEMPTS_MOST = 20;

    private final Instant now;
    private final ZoneId zone;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> lacking = new ArrayList<>();

    EntryChecks(Instant now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    /**
     * Looks at an entry, and says what is wrong with it as far as it goes; what is not there yet is in {@link #found}.
     *
     * @param before the book as it stands
     * @param pump what the record of devices says
     */
    List<Problem> of(NewEntry entry, Ledger before, Optional<PumpNow> pump, List<Long> numbers) {
        when(entry, pump);
        words("unusual", entry.unusual());
        entry.corrects().ifPresent(correction -> correction(correction, numbers));
        var day = entry.at().toLocalDate();
        entry.what().printedAlarm().ifPresent(alarm -> alarm(alarm, day));
        if (entry.what() instanceof Refill refill) {
            refill(refill, before, entry);
        } else if (entry.what() instanceof Change change) {
            if (before.reservoir().isEmpty() && change.printedAlarm().isEmpty() && !entry.emergency()) {
                add("printedAlarm", "pump.problem.change.print-out");
            }
            // in an emergency nobody is asked why
            if (entry.emergency()) {
                words("reason", change.reason());
            } else {
                reason("reason", change.reason());
            }
        }
        return List.copyOf(problems);
    }

    private void when(NewEntry entry, Optional<PumpNow> pump) {
        var at = entry.at().atZone(zone).toInstant();
        var day = entry.at().toLocalDate();
        if (at.isAfter(now)) {
            add("at", "pump.problem.at.future");
        } else if (day.isBefore(LocalDate.ofInstant(now, zone).minusYears(YEARS_BACK))) {
            add("at", "pump.problem.at.old", YEARS_BACK);
        }
        pump.ifPresent(known -> {
            if (known.isIn() && day.isBefore(known.since())) {
                add("at", "pump.problem.at.before-pump", known.since());
            }
            if (!known.isIn() && day.isAfter(known.since())) {
                add("at", "pump.problem.at.no-pump", known.since());
            }
        });
    }

    private void correction(Correction correction, List<Long> numbers) {
        reason("correction", correction.reason());
        if (!numbers.contains(correction.entry())) {
            add("correction", "pump.problem.correction.gone");
        }
    }

    private void alarm(LocalDate alarm, LocalDate day) {
        if (alarm.isBefore(day)) {
            add("printedAlarm", "pump.problem.alarm.before");
        }
        if (alarm.isAfter(day.plusYears(YEARS_AHEAD))) {
            add("printedAlarm", "pump.problem.alarm.far", YEARS_AHEAD);
        }
    }

    private void refill(Refill refill, Ledger before, NewEntry entry) {
        if (refill.elsewhere()) {
            if (refill.printedAlarm().isEmpty() && refill.injected().isEmpty()) {
                lack("printedAlarm", "pump.problem.elsewhere.nothing");
            }
        } else {
            if (refill.injected().isEmpty()) {
                lack("injected", "pump.problem.injected.missing");
            }
            if (refill.setting().isEmpty()) {
                lack("strength", "pump.problem.setting.missing");
            }
        }
        if (refill.marginDays() < PumpRules.LEAST_MARGIN || refill.marginDays() > PumpRules.MOST_MARGIN) {
            add("margin", "pump.problem.margin", PumpRules.LEAST_MARGIN, PumpRules.MOST_MARGIN);
        }
        before.implant().map(PumpEntry.Implant::model).ifPresent(model -> volumes(refill, model));
        var at = entry.at().atZone(zone).toInstant();
        refill.withdrawn()
                .ifPresent(found -> before.reservoir()
                        .filter(since -> !at.isBefore(since.filling().at()))
                        .map(since -> since.filling().volume())
                        .filter(filled -> found.compareTo(filled) > 0)
                        .ifPresent(filled -> add(
                                "withdrawn",
                                "pump.problem.withdrawn.more",
                                filled.rounded(2).toPlainString())));
        refill.beyondUse()
                .filter(last -> last.isBefore(entry.at().toLocalDate()))
                .ifPresent(last -> add("beyondUse", "pump.problem.beyond-use.before"));
        details(refill.details(), entry);
    }

    private void volumes(Refill refill, PumpModel model) {
        refill.injected()
                .filter(volume -> volume.compareTo(model.reservoir()) > 0)
                .ifPresent(volume -> add(
                        "injected", "pump.problem.overfilled", model.reservoir().rounded(2)));
        refill.injected()
                .filter(volume -> volume.compareTo(model.alarm()) <= 0)
                .ifPresent(volume -> add(
                        "injected", "pump.problem.injected.alarm", model.alarm().rounded(2)));
        var most = model.reservoir();
        refill.measured()
                .filter(volume -> volume.compareTo(most) > 0)
                .ifPresent(volume -> add("measured", "pump.problem.overfilled", most.rounded(2)));
        refill.left()
                .filter(volume ->
                        volume.plus(refill.injected().orElse(Volume.NONE)).compareTo(most) > 0)
                .ifPresent(volume -> add("left", "pump.problem.overfilled", most.rounded(2)));
    }

    private void details(RefillDetails details, NewEntry entry) {
        most("drug", details.drug(), NAME_MOST);
        most("lot", details.lot(), LOT_MOST);
        most("look", details.look(), LONG_MOST);
        most("doneBy", details.doneBy(), NAME_MOST);
        words("note", details.note());
        if (details.attempts() < 0 || details.attempts() > ATTEMPTS_MOST) {
            add("attempts", "pump.problem.attempts", ATTEMPTS_MOST);
        }
        details.watched().ifPresent(watch -> {
            if (watch.until().isBefore(watch.from())) {
                add("watched", "pump.problem.watched.order");
            } else if (watch.from().isBefore(entry.at())) {
                add("watched", "pump.problem.watched.early");
            }
        });
    }

    /** Words that must be there. */
    void reason(String field, String words) {
        if (words.isBlank()) {
            lack(field, "pump.problem.reason");
        }
        words(field, words);
    }

    private void words(String field, String words) {
        most(field, words, WORDS_MOST);
    }

    private void most(String field, String words, int most) {
        if (words.length() > most) {
            add(field, "pump.problem.long", most);
        }
    }

    private void add(String field, String key, Object... args) {
        problems.add(Problem.at(field, key, args));
    }

    private void lack(String field, String key) {
        lacking.add(Problem.at(field, key));
    }

    /** All that was found so far, what is not there yet included. */
    List<Problem> found() {
        var all = new ArrayList<>(problems);
        all.addAll(lacking);
        return all;
    }
}
