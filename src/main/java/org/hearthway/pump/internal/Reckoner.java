package org.hearthway.pump.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.PumpSums;
import org.hearthway.pump.PumpSums.Attention;
import org.hearthway.pump.engine.AfterFill;
import org.hearthway.pump.engine.BridgePlan;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.pump.engine.Conversion;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Deliverable;
import org.hearthway.pump.engine.DoseContext;
import org.hearthway.pump.engine.DoseStep;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Mixture;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.ScheduleTotal;

/**
 * Reckons what an entry comes to.
 *
 * @param findingDays so long after the implant the dose is being found, and the rules for that hold
 */
record Reckoner(ClinicRules rules, ZoneId zone, Predicate<LocalDate> open, int findingDays) {

    private static final int USUAL_ATTEMPTS = 2;

    /** The child whose pump it is. */
    record Who(LocalDate born, Optional<LocalDate> implanted) {}

    PumpSums reckon(Ledger before, PumpEntry entry, Who who) {
        var attention = EnumSet.noneOf(Attention.class);
        var fill = entry.what() instanceof Refill refill ? Optional.of(refill) : Optional.<Refill>empty();
        var old = before.settingAt(entry.at());
        var set = entry.what().setting();
        var pump = before.implant().map(PumpEntry.Implant::model);
        var residual = fill.flatMap(Refill::withdrawn)
                .flatMap(found -> before.reservoir()
                        .filter(since -> !entry.at().isBefore(since.filling().at()))
                        .map(since -> Residual.at(since, entry.at(), found, rules.residual())));
        mark(attention, Attention.RESIDUAL, residual.filter(Residual::flagged).isPresent());
        var after = fill.flatMap(refill -> refill.injected()
                .flatMap(in -> refill.measured()
                        .flatMap(measured ->
                                pump.map(model -> AfterFill.check(model, in, measured, rules.residual())))));
        mark(attention, Attention.AFTER_FILL, after.filter(AfterFill::flagged).isPresent());
        var step = step(before, old, set, entry.at(), who);
        mark(
                attention,
                Attention.STEP,
                step.filter(one -> !one.findings().isEmpty()).isPresent());
        var deliverable = set.flatMap(now -> pump.map(model -> Deliverable.check(model, now.strength(), now.dosing())));
        mark(
                attention,
                Attention.NOT_DELIVERABLE,
                deliverable.filter(can -> !can.holds()).isPresent());
        var otherStrength = old.isPresent()
                && set.isPresent()
                && !old.get().strength().equals(set.get().strength());
        mark(attention, Attention.STRENGTH, otherStrength);
        var with = before.with(entry);
        var forecast = with.reservoir().map(next -> RefillForecast.of(next, ownRules(fill), zone, open));
        var window = with.window(rules.refill(), open);
        mark(
                attention,
                Attention.PRINT_OUT,
                window.flatMap(RefillWindow::printOut)
                        .filter(PrintOutCheck::flagged)
                        .isPresent());
        mark(
                attention,
                Attention.DRUG_OUT_OF_DATE,
                fill.filter(refill -> isOld(refill, entry.at())).isPresent());
        mark(
                attention,
                Attention.ATTEMPTS,
                fill.filter(refill -> refill.details().attempts() > USUAL_ATTEMPTS)
                        .isPresent());
        return new PumpSums(
                residual,
                after,
                step,
                set.flatMap(Reckoner::total),
                set.flatMap(Reckoner::conversion),
                deliverable,
                otherStrength ? mixture(fill, old.get(), set.get()) : Optional.empty(),
                otherStrength ? bridge(before, pump, old.get(), set.get()) : Optional.empty(),
                forecast,
                window,
                attention);
    }

    private RefillRules ownRules(Optional<Refill> fill) {
        return fill.map(Refill::marginDays).map(rules.refill()::withMargin).orElse(rules.refill());
    }

    private boolean isOld(Refill refill, Instant at) {
        var day = at.atZone(zone).toLocalDate();
        return refill.beyondUse().filter(day::isAfter).isPresent()
                || refill.details().expires().filter(day::isAfter).isPresent();
    }

    private Optional<DoseStep> step(Ledger before, Optional<Setting> old, Optional<Setting> set, Instant at, Who who) {
        var from = old.flatMap(Reckoner::dose);
        var to = set.flatMap(Reckoner::dose);
        if (from.isEmpty() || to.isEmpty() || from.get().equals(to.get())) {
            return Optional.empty();
        }
        var day = at.atZone(zone).toLocalDate();
        var finding = who.implanted()
                .filter(in -> ChronoUnit.DAYS.between(in, day) < findingDays)
                .isPresent();
        return Optional.of(DoseStep.check(
                from.get(),
                to.get(),
                at,
                new DoseContext(
                        Math.max(0, Period.between(who.born(), day).getYears()),
                        DoseContext.Origin.CEREBRAL,
                        finding ? DoseContext.Phase.FINDING : DoseContext.Phase.UPKEEP,
                        begun(before),
                        increases(before)),
                rules.dose()));
    }

    private static Optional<Instant> begun(Ledger book) {
        return book.counted().stream()
                .filter(entry -> entry.what().setting().isPresent())
                .map(PumpEntry::at)
                .findFirst();
    }

    private static List<Instant> increases(Ledger book) {
        var increases = new ArrayList<Instant>();
        var last = Optional.<DailyDose>empty();
        for (var entry : book.counted()) {
            var set = entry.what().setting();
            var dose = set.flatMap(Reckoner::dose);
            if (last.isPresent() && dose.isPresent() && dose.get().compareTo(last.get()) > 0) {
                increases.add(entry.at());
            }
            last = set.isPresent() ? dose : last;
        }
        return increases;
    }

    /** What a setting gives in a day; empty when nothing is given. */
    private static Optional<DailyDose> dose(Setting set) {
        var rate = set.dosing().perDay(set.strength());
        return rate.exact().signum() == 0 ? Optional.empty() : Optional.of(new DailyDose(rate.exact()));
    }

    private static Optional<ScheduleTotal> total(Setting set) {
        return set.dosing() instanceof Dosing.Cycle cycle
                ? Optional.of(ScheduleTotal.of(cycle.day()))
                : Optional.empty();
    }

    private static Optional<Conversion> conversion(Setting set) {
        return dose(set).map(dose -> Conversion.of(dose, set.strength()));
    }

    /** Of what could not be drawn out only somebody who reads the label knows. */
    private static Optional<Mixture> mixture(Optional<Refill> fill, Setting old, Setting set) {
        return fill.flatMap(refill -> refill.left()
                .flatMap(left ->
                        refill.injected().map(added -> Mixture.of(left, old.strength(), added, set.strength()))));
    }

    private Optional<BridgePlan> bridge(Ledger before, Optional<PumpModel> pump, Setting old, Setting set) {
        var dose = dose(old).or(() -> dose(set));
        var catheter = before.implant().map(PumpEntry.Implant::catheter);
        return pump.flatMap(model -> catheter.flatMap(tube -> dose.map(wanted ->
                BridgePlan.of(model, tube, old.strength(), set.strength(), wanted, rules.deadVolumePercent()))));
    }

    private static void mark(Set<Attention> all, Attention one, boolean holds) {
        if (holds) {
            all.add(one);
        }
    }
}
