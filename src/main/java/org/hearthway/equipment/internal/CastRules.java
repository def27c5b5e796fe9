package org.hearthway.equipment.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.equipment.CastSeries;

/** What may be entered about a series of casts; the field of a cast ends with its place, from 0. */
final class CastRules {

    private static final int DAYS_AHEAD = 90;
    private static final int YEARS_BACK = 2;
    private static final int LONGEST = 60;
    private static final int MOST_CASTS = 40;
    private static final int LEAST_ANGLE = -90;
    private static final int MOST_ANGLE = 180;
    private static final int TEXT = 500;

    private CastRules() {}

    static void check(CastSeries.Data data, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (data.from().isAfter(today.plusDays(DAYS_AHEAD)) || data.from().isBefore(today.minusYears(YEARS_BACK))) {
            problems.add(Problem.at("from", "equipment.problem.cast.from", DAYS_AHEAD, YEARS_BACK));
        }
        if (data.everyDays() < 1 || data.everyDays() > LONGEST) {
            problems.add(Problem.at("everyDays", "equipment.problem.cast.every", LONGEST));
        }
        if (data.lastOff().filter(off -> !off.isAfter(data.from())).isPresent()) {
            problems.add(Problem.at("lastOff", "equipment.problem.cast.last-off"));
        }
        if (data.ended()
                .filter(end -> end.isAfter(today) || end.isBefore(data.from()))
                .isPresent()) {
            problems.add(Problem.at("ended", "equipment.problem.cast.ended"));
        }
        if (data.casts().size() > MOST_CASTS) {
            problems.add(Problem.at("", "equipment.problem.cast.many", MOST_CASTS));
        }
        for (var place = 0; place < data.casts().size(); place++) {
            cast(data.casts().get(place), data, today, place, problems);
        }
        Invalid.ifAny(problems);
    }

    private static void cast(
            CastSeries.Cast cast, CastSeries.Data data, LocalDate today, int place, List<Problem> problems) {
        var former = place == 0 ? data.from() : data.casts().get(place - 1).on();
        if (cast.on().isAfter(today) || cast.on().isBefore(former)) {
            problems.add(Problem.at("on" + place, "equipment.problem.cast.on"));
        }
        if (cast.off()
                .filter(off -> off.isAfter(today) || off.isBefore(cast.on()))
                .isPresent()) {
            problems.add(Problem.at("off" + place, "equipment.problem.cast.off"));
        }
        if (cast.degrees()
                .filter(angle -> angle < LEAST_ANGLE || angle > MOST_ANGLE)
                .isPresent()) {
            problems.add(Problem.at("degrees" + place, "equipment.problem.cast.degrees", LEAST_ANGLE, MOST_ANGLE));
        }
        if (cast.skin().strip().length() > TEXT) {
            problems.add(Problem.at("skin" + place, "equipment.problem.text", TEXT));
        }
    }
}
