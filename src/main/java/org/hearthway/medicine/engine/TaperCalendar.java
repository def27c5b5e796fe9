package org.hearthway.medicine.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * From which day which dose, as a physician wrote it. Nothing in it is computed.
 *
 * @param steps at least one, each later than the one before it
 * @param stopsOn the first day without the medicine, after the last step; empty when the last dose stays
 */
public record TaperCalendar(List<Step> steps, Optional<LocalDate> stopsOn) {

    /**
     * One row.
     *
     * @param from first day of the dose; it holds until the next row
     * @param dose as written
     */
    public record Step(LocalDate from, String dose) {}

    /** @throws IllegalArgumentException when the days do not ascend */
    public TaperCalendar {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || !notAscending(steps).isEmpty()) {
            throw new IllegalArgumentException("a calendar without steps, or with days that do not ascend");
        }
        var last = steps.get(steps.size() - 1).from();
        if (stopsOn.filter(stop -> !stop.isAfter(last)).isPresent()) {
            throw new IllegalArgumentException("a calendar that stops before its last step");
        }
    }

    /** Places of the steps that do not lie after the step before them. */
    public static List<Integer> notAscending(List<Step> steps) {
        return IntStream.range(1, steps.size())
                .filter(place ->
                        !steps.get(place).from().isAfter(steps.get(place - 1).from()))
                .boxed()
                .toList();
    }

    /** The step that holds on a day; empty before the first one and after the stop. */
    public Optional<Step> on(LocalDate day) {
        if (hasStopped(day)) {
            return Optional.empty();
        }
        return steps.stream().filter(step -> !step.from().isAfter(day)).reduce((earlier, later) -> later);
    }

    /** Whether the medicine has stopped by a day. */
    public boolean hasStopped(LocalDate day) {
        return stopsOn.filter(stop -> !stop.isAfter(day)).isPresent();
    }

    /** Every day on which something changes: each step's first day, and the stop. */
    public List<LocalDate> changeDays() {
        return Stream.concat(steps.stream().map(Step::from), stopsOn.stream()).toList();
    }

    /** The last day on which something changes. */
    public LocalDate lastChange() {
        var days = new ArrayList<>(changeDays());
        return days.get(days.size() - 1);
    }

    /** Whether another copy says the same days and the same doses. */
    public boolean sameAs(TaperCalendar other) {
        return differing(other).isEmpty() && stopsOn.equals(other.stopsOn);
    }

    /** Places of steps that another copy has otherwise, or has not, or has besides. */
    public List<Integer> differing(TaperCalendar other) {
        return IntStream.range(0, Math.max(steps.size(), other.steps.size()))
                .filter(place -> place >= steps.size()
                        || place >= other.steps.size()
                        || !same(steps.get(place), other.steps.get(place)))
                .boxed()
                .toList();
    }

    private static boolean same(Step first, Step second) {
        return first.from().equals(second.from()) && AsWritten.same(first.dose(), second.dose());
    }
}
