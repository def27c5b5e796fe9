package org.hearthway.pump.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hearthway.base.Invalid;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.Filling;
import org.hearthway.pump.engine.Program;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Reservoir;
import org.hearthway.pump.engine.Volume;

/**
 * Reads a book: which entries count, which wait, and what reservoir they come to. Only entries since the pump came in
 * that is in now are in it.
 */
final class Ledger {

    private static final Comparator<PumpEntry> IN_TIME =
            Comparator.comparing(PumpEntry::at).thenComparing(PumpEntry::number);

    private final Map<Long, Long> superseded = new HashMap<>();
    private final List<PumpEntry> counted;
    private final List<PumpEntry> waiting;
    private final ZoneId zone;

    /**
     * Reads it.
     *
     * @param book all entries, in any order
     */
    Ledger(Collection<PumpEntry> book, ZoneId zone) {
        this.zone = zone;
        var byNumber = new HashMap<Long, PumpEntry>();
        book.forEach(entry -> byNumber.put(entry.number(), entry));
        for (var entry : book) {
            entry.corrects().ifPresent(correction -> {
                var wrong = byNumber.get(correction.entry());
                // one that never counted gives way at once, another only when what replaces it was checked
                if (wrong != null && (entry.isSure() || !wrong.isSure())) {
                    superseded.merge(wrong.number(), entry.number(), Math::max);
                }
            });
        }
        counted = book.stream()
                .filter(PumpEntry::isSure)
                .filter(entry -> !superseded.containsKey(entry.number()))
                .sorted(IN_TIME)
                .toList();
        waiting = book.stream()
                .filter(entry -> !entry.isSure())
                .filter(entry -> !superseded.containsKey(entry.number()))
                .sorted(IN_TIME)
                .toList();
    }

    /** The entry in whose favor another no longer counts. */
    Optional<Long> supersededBy(long number) {
        return Optional.ofNullable(superseded.get(number));
    }

    /** Entries that may be relied on, in the order in which they were done. */
    List<PumpEntry> counted() {
        return counted;
    }

    /** Entries that wait for their second check, in the order in which they were done. */
    List<PumpEntry> waiting() {
        return waiting;
    }

    /** As it would be if everything that waits, but for corrections of what counts, counted too. */
    Ledger withWaiting() {
        return new Ledger(
                Stream.concat(counted.stream(), waiting.stream())
                        .map(Ledger::sure)
                        .toList(),
                zone);
    }

    /** As it would be with one more entry that counts. */
    Ledger with(PumpEntry more) {
        return new Ledger(Stream.concat(counted.stream(), Stream.of(sure(more))).toList(), zone);
    }

    /** As it would be if an entry had never been written. */
    Ledger without(long number) {
        return new Ledger(
                Stream.concat(counted.stream(), waiting.stream())
                        .filter(entry -> entry.number() != number)
                        .toList(),
                zone);
    }

    private static PumpEntry sure(PumpEntry entry) {
        return new PumpEntry(
                entry.number(),
                entry.at(),
                entry.what(),
                entry.corrects(),
                entry.emergency(),
                entry.unusual(),
                entry.by(),
                entry.entered(),
                entry.check(),
                true);
    }

    /** The figures of the pump; the last that were entered. */
    Optional<Implant> implant() {
        return counted.stream()
                .filter(entry -> entry.what() instanceof Implant)
                .reduce((first, second) -> second)
                .map(entry -> (Implant) entry.what());
    }

    /** The last refill. */
    Optional<PumpEntry> fill() {
        return counted.stream().filter(PumpEntry::isRefill).reduce((first, second) -> second);
    }

    /** Whether a refill waits, newer than the last that counts or in its place. */
    Optional<PumpEntry> waitingFill() {
        var last = fill();
        return waiting.stream()
                .filter(PumpEntry::isRefill)
                .filter(entry -> last.isEmpty()
                        || !entry.at().isBefore(last.get().at())
                        || entry.corrects()
                                .filter(correction ->
                                        correction.entry() == last.get().number())
                                .isPresent())
                .reduce((first, second) -> second);
    }

    /** How the pump runs at a moment, by what was entered of it until then. */
    Optional<Setting> settingAt(Instant moment) {
        return counted.stream()
                .filter(entry -> !entry.at().isAfter(moment))
                .flatMap(entry -> entry.what().setting().stream())
                .reduce((first, second) -> second);
    }

    /** The last entry that sets the pump. */
    Optional<PumpEntry> lastSetting() {
        return counted.stream()
                .filter(entry -> entry.what().setting().isPresent())
                .reduce((first, second) -> second);
    }

    /** The entry whose print-out holds: the last that set the pump since the last refill, if it has one. */
    Optional<PumpEntry> printOut() {
        return sinceFill()
                .reduce((first, second) -> second)
                .filter(entry -> entry.what().printedAlarm().isPresent());
    }

    /** Where nothing can be reckoned, an older print-out since the fill is all that anybody knows. */
    private Optional<LocalDate> lastPrinted() {
        return sinceFill()
                .flatMap(entry -> entry.what().printedAlarm().stream())
                .reduce((first, second) -> second);
    }

    private Stream<PumpEntry> sinceFill() {
        return fill().stream()
                .flatMap(fill -> counted.stream()
                        .filter(entry -> IN_TIME.compare(entry, fill) >= 0 && !(entry.what() instanceof Implant)));
    }

    /** The reservoir since the last refill; empty when a figure of it is not known, or the entries do not fit each other. */
    Optional<Reservoir> reservoir() {
        return fill().flatMap(this::reservoir);
    }

    /** The reservoir from a refill until the next one. */
    Optional<Reservoir> reservoir(PumpEntry fill) {
        if (!(fill.what() instanceof Refill refill)) {
            return Optional.empty();
        }
        var next = counted.stream()
                .filter(entry -> entry.isRefill() && IN_TIME.compare(entry, fill) > 0)
                .findFirst();
        var changes = counted.stream()
                .filter(entry -> entry.what() instanceof PumpEntry.Change)
                .filter(entry -> !entry.at().isBefore(fill.at()) && IN_TIME.compare(entry, fill) > 0)
                .filter(entry ->
                        next.filter(later -> !entry.at().isBefore(later.at())).isEmpty())
                .toList();
        var running = refill.setting().or(() -> settingAt(fill.at()));
        return implant()
                .flatMap(pump -> refill.injected()
                        .flatMap(
                                volume -> running.flatMap(set -> reservoir(pump, fill, refill, volume, set, changes))));
    }

    private Optional<Reservoir> reservoir(
            Implant pump, PumpEntry fill, Refill refill, Volume volume, Setting running, List<PumpEntry> changes) {
        try {
            var reservoir = Reservoir.filled(
                    pump.model(), new Filling(fill.at(), volume, refill.beyondUse()), program(fill.at(), running));
            for (var change : changes) {
                reservoir = reservoir.then(
                        program(change.at(), change.what().setting().orElseThrow()));
            }
            return Optional.of(reservoir);
        } catch (Invalid doesNotFit) {
            // figures of the pump that were entered later can contradict an entry of before: then nothing is reckoned
            return Optional.empty();
        }
    }

    private Program program(Instant at, Setting set) {
        return Program.set(at, zone, set.strength(), set.dosing());
    }

    /** When to refill, by forecast and print-out; empty when neither tells. */
    Optional<RefillWindow> window(RefillRules rules, Predicate<LocalDate> open) {
        return fill().flatMap(entry -> {
            var fill = (Refill) entry.what();
            var own = rules.withMargin(fill.marginDays());
            var reservoir = reservoir();
            var printed = reservoir.isPresent()
                    ? printOut().flatMap(print -> print.what().printedAlarm())
                    : lastPrinted();
            if (reservoir.isEmpty() && printed.isEmpty()) {
                return Optional.empty();
            }
            var ours = reservoir.flatMap(
                    known -> RefillForecast.of(known, own, zone, open).planningDay());
            return Optional.of(
                    RefillWindow.of(entry.at().atZone(zone).toLocalDate(), ours, printed, fill.beyondUse(), own, open));
        });
    }
}
