package org.hearthway.medicine.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.Tapers.After;
import org.hearthway.medicine.Tapers.TaperData;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.medicine.engine.TaperCalendar.Step;

/** What a taper calendar must be before anybody signs it. */
final class TaperRules {

    private static final int YEARS_BACK = 1;
    private static final int YEARS_AHEAD = 3;

    private TaperRules() {}

    /** The calendar that was typed. */
    static TaperCalendar check(TaperData data, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (data.steps().isEmpty() || data.steps().size() > Tapers.STEPS_MOST) {
            throw new Invalid(Problem.at("steps", "medicine.problem.steps", Tapers.STEPS_MOST));
        }
        var texts = new TextBounds(problems);
        for (var place = 0; place < data.steps().size(); place++) {
            texts.needed(
                    "dose" + place,
                    "medicine.problem.step-dose",
                    data.steps().get(place).dose(),
                    Tapers.DOSE_MOST);
            if (isFar(data.steps().get(place).from(), today)) {
                problems.add(Problem.at("from" + place, "medicine.problem.step-far", YEARS_BACK, YEARS_AHEAD));
            }
        }
        TaperCalendar.notAscending(data.steps())
                .forEach(place -> problems.add(Problem.at("from" + place, "medicine.problem.step-order")));
        after(data, today, problems);
        Invalid.ifAny(problems);
        return new TaperCalendar(
                data.steps().stream()
                        .map(step -> new Step(step.from(), step.dose().strip()))
                        .toList(),
                data.stopsOn());
    }

    private static void after(TaperData data, LocalDate today, List<Problem> problems) {
        if (data.after().isEmpty()) {
            problems.add(Problem.at("after", "medicine.problem.after"));
            return;
        }
        var stops = data.after().equals(Optional.of(After.STOP));
        var last = data.steps().get(data.steps().size() - 1).from();
        if (stops
                && data.stopsOn()
                        .filter(stop -> stop.isAfter(last) && !isFar(stop, today))
                        .isEmpty()) {
            problems.add(Problem.at("stopsOn", "medicine.problem.stops-on", YEARS_AHEAD));
        }
        if (!stops && data.stopsOn().isPresent()) {
            problems.add(Problem.at("stopsOn", "medicine.problem.stays"));
        }
    }

    private static boolean isFar(LocalDate day, LocalDate today) {
        return day.isBefore(today.minusYears(YEARS_BACK)) || day.isAfter(today.plusYears(YEARS_AHEAD));
    }

    /** Says which rows differ, never what the first person typed. */
    static void compare(TaperCalendar first, TaperCalendar again) {
        var problems = new ArrayList<Problem>();
        first.differing(again).stream()
                .limit(1)
                .forEach(place -> problems.add(Problem.at("dose" + place, "medicine.problem.step-differs", place + 1)));
        if (!first.stopsOn().equals(again.stopsOn())) {
            problems.add(Problem.at("stopsOn", "medicine.problem.differs"));
        }
        Invalid.ifAny(problems);
    }
}
