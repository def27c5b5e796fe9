package org.hearthway.surveillance.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When something is checked at one level: steps at an age come first, in order; what repeats follows. Months are
 * calendar months counted from one recorded check, so that a day such as the 31st does not creep to the 28th.
 *
 * @param steps in order; each {@link Step.Every} behind all others
 * @param early how long before its time a check still answers a step
 */
public record Rhythm(List<Step> steps, Period early) {

    public Rhythm {
        steps = List.copyOf(steps);
    }

    /**
     * The checks to come. A recorded check is never moved; another one changes only what lies after it. Without a check
     * nothing that is counted from a check has a date.
     *
     * @param birth the child's day of birth
     * @param done checks that took place, in any order
     * @param today a step at an age is passed over once a later one has begun
     * @param most how many at most, at least 1
     * @return in ascending order
     */
    public List<Due> dates(LocalDate birth, List<Done> done, LocalDate today, int most) {
        var checks = done.stream().sorted(Comparator.comparing(Done::day)).toList();
        var open = new ArrayList<Due>();
        for (var step : steps) {
            var due = window(step, birth, checks);
            if (due.filter(asked -> isAnswered(asked, checks)).isPresent()) {
                // what answers a step answers those before it, too
                open.clear();
            } else {
                due.ifPresent(open::add);
            }
        }
        open.removeIf(due -> open.stream()
                .anyMatch(later -> later.by().isAfter(due.by()) && !later.from().isAfter(today)));
        var ahead =
                open.stream().sorted(Comparator.comparing(Due::by)).limit(most).toList();
        return ahead.isEmpty() && !checks.isEmpty() ? repeated(checks, most) : ahead;
    }

    private static Optional<Due> window(Step step, LocalDate birth, List<Done> checks) {
        if (step instanceof Step.First first) {
            return Optional.of(new Due(birth.plus(first.from()), birth.plus(first.until()), step, birth));
        }
        if (step instanceof Step.Age age) {
            return Optional.of(new Due(birth.plus(age.from()), birth.plus(age.until()), step, birth));
        }
        if (step instanceof Step.AfterFirst after) {
            return checks.stream().findFirst().map(first -> {
                var day = first.day().plus(after.gap());
                return new Due(day, day, step, first.day());
            });
        }
        return Optional.empty();
    }

    private boolean isAnswered(Due due, List<Done> checks) {
        return due.rule() instanceof Step.First
                ? !checks.isEmpty()
                : checks.stream()
                        .anyMatch(check -> !check.day().isBefore(due.from().minus(early)));
    }

    private List<Due> repeated(List<Done> checks, int most) {
        var first = checks.get(0).day();
        var last = checks.get(checks.size() - 1);
        var ahead = new ArrayList<Due>();
        var day = last.day();
        var months = 0L;
        while (ahead.size() < most) {
            var every = phase(first, day, last.stable());
            if (every.isEmpty()) {
                break;
            }
            months += every.get().months();
            day = last.day().plusMonths(months);
            ahead.add(new Due(day, day, every.get(), last.day()));
        }
        return List.copyOf(ahead);
    }

    /** Which repetition holds for the check that follows a day: the first that has not ended by then. */
    private Optional<Step.Every> phase(LocalDate first, LocalDate day, boolean stable) {
        return steps.stream()
                .filter(Step.Every.class::isInstance)
                .map(Step.Every.class::cast)
                .filter(every -> every.during()
                        .map(during -> day.isBefore(first.plus(during)))
                        .orElse(true))
                .filter(every -> !(every.untilStable() && stable))
                .findFirst();
    }
}
