package org.hearthway.pump.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A new dose against the old one and against what is usual. It advises; nothing is refused.
 *
 * @param percent of the old dose; negative for a decrease
 * @param increasesWithinADay raises within the 24 hours before, this one included
 * @param findings what is out of the usual; empty when nothing is
 * @param usual sizes of a step that are usual for this person, up or down
 * @param trials daily doses of the trials at this age
 * @param who it was looked at for
 */
public record DoseStep(
        DailyDose from,
        DailyDose to,
        Amount percent,
        int increasesWithinADay,
        List<Finding> findings,
        PercentRange usual,
        DoseRange trials,
        DoseContext who,
        Derivation how) {

    /** What is out of the usual. */
    public enum Kind {
        /** A smaller step than usual: percent, least, most. */
        SMALLER_STEP,
        /** A larger step than usual: percent, least, most. */
        LARGER_STEP,
        /** So large that it may be too much: percent, limit. */
        MAY_BE_TOO_MUCH,
        /** Raised in the first 24 hours of the pump: hours since. */
        IN_THE_FIRST_DAY,
        /** Raised again within 24 hours: hours since the last. */
        AGAIN_WITHIN_A_DAY,
        /** Less than in the trials: dose, least, most. */
        BELOW_TRIALS,
        /** More than in the trials: dose, least, most. */
        ABOVE_TRIALS,
        /** Not where most patients end: dose, least, most. */
        UNLIKE_MOST,
        /** Younger than the age for which safety was shown: years, limit. */
        YOUNGER_THAN_SHOWN
    }

    /** One of them, with its figures in the order that its kind names. */
    public record Finding(Kind kind, List<Quantity> figures) {
        public Finding {
            figures = List.copyOf(figures);
        }

        static Finding of(Kind kind, Quantity... figures) {
            return new Finding(kind, List.of(figures));
        }
    }

    private static final Elapsed A_DAY = Elapsed.of(Duration.ofDays(1));
    private static final int TWELVE_YEARS = 12;
    private static final int SHOWN_FROM_YEARS = 4;
    private static final int ADULT_YEARS = 18;

    public DoseStep {
        findings = List.copyOf(findings);
    }

    /**
     * Looks at a step.
     *
     * @param at when it is done
     */
    public static DoseStep check(DailyDose from, DailyDose to, Instant at, DoseContext who, DoseRules rules) {
        var working = new Derivation.Working();
        var percent = working.line(
                Formula.STEP_PERCENT,
                Symbol.PERCENT,
                Amount.percent(
                        to.exact().subtract(from.exact()).divide(from.exact()).multiply(Exact.HUNDRED)),
                Symbol.OLD_DOSE.is(from),
                Symbol.NEW_DOSE.is(to));
        var findings = new ArrayList<Finding>();
        var raised = to.compareTo(from) > 0;
        var usual = raised ? usual(who, rules) : rules.decrease();
        var trials = who.years() < TWELVE_YEARS ? rules.underTwelve() : rules.fromTwelve();
        if (to.compareTo(from) != 0) {
            size(percent, usual).ifPresent(findings::add);
        }
        if (raised && percent.exact().compareTo(BigFraction.of(rules.cautionPercent())) > 0) {
            findings.add(Finding.of(Kind.MAY_BE_TOO_MUCH, percent, Amount.count(rules.cautionPercent(), Unit.PERCENT)));
        }
        var within = who.increases().stream()
                .filter(before -> isWithinADay(before, at))
                .toList();
        if (raised) {
            who.begun()
                    .filter(begun -> isWithinADay(begun, at))
                    .ifPresent(begun -> findings.add(Finding.of(Kind.IN_THE_FIRST_DAY, Elapsed.between(begun, at))));
            within.stream()
                    .max(Instant::compareTo)
                    .ifPresent(last -> findings.add(Finding.of(Kind.AGAIN_WITHIN_A_DAY, Elapsed.between(last, at))));
        }
        total(to, who, rules, trials, findings);
        return new DoseStep(
                from, to, percent, within.size() + (raised ? 1 : 0), findings, usual, trials, who, working.done());
    }

    private static boolean isWithinADay(Instant before, Instant at) {
        return !before.isAfter(at) && Elapsed.between(before, at).compareTo(A_DAY) < 0;
    }

    private static PercentRange usual(DoseContext who, DoseRules rules) {
        if (who.years() >= ADULT_YEARS && who.origin() == DoseContext.Origin.SPINAL) {
            return rules.spinalIncrease();
        }
        return who.phase() == DoseContext.Phase.UPKEEP ? rules.upkeepIncrease() : rules.usualIncrease();
    }

    private static Optional<Finding> size(Amount percent, PercentRange usual) {
        var size = percent.exact().abs();
        var least = Amount.count(usual.least(), Unit.PERCENT);
        var most = Amount.count(usual.most(), Unit.PERCENT);
        if (size.compareTo(least.exact()) < 0) {
            return Optional.of(Finding.of(Kind.SMALLER_STEP, percent, least, most));
        }
        return size.compareTo(most.exact()) > 0
                ? Optional.of(Finding.of(Kind.LARGER_STEP, percent, least, most))
                : Optional.empty();
    }

    private static void total(
            DailyDose dose, DoseContext who, DoseRules rules, DoseRange trials, List<Finding> findings) {
        var most = who.origin() == DoseContext.Origin.SPINAL ? rules.mostSpinal() : rules.mostCerebral();
        if (dose.compareTo(trials.least()) < 0) {
            findings.add(Finding.of(Kind.BELOW_TRIALS, dose, trials.least(), trials.most()));
        } else if (dose.compareTo(trials.most()) > 0) {
            findings.add(Finding.of(Kind.ABOVE_TRIALS, dose, trials.least(), trials.most()));
        }
        var upkeep = who.phase() == DoseContext.Phase.UPKEEP;
        if (upkeep && (dose.compareTo(most.least()) < 0 || dose.compareTo(most.most()) > 0)) {
            findings.add(Finding.of(Kind.UNLIKE_MOST, dose, most.least(), most.most()));
        }
        if (who.years() < SHOWN_FROM_YEARS) {
            findings.add(Finding.of(
                    Kind.YOUNGER_THAN_SHOWN,
                    Amount.count(who.years(), Unit.YEARS),
                    Amount.count(SHOWN_FROM_YEARS, Unit.YEARS)));
        }
    }
}
