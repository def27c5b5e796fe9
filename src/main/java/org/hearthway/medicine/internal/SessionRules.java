package org.hearthway.medicine.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.Injection;
import org.hearthway.medicine.ToxinSessions.PlaceData;
import org.hearthway.medicine.ToxinSessions.SessionData;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.medicine.engine.Preparation;
import org.hearthway.medicine.engine.ToxinInterval;
import org.hearthway.medicine.engine.ToxinUnits;

/**
 * What a toxin session must be.
 *
 * @param interval the clinic's least time between two
 * @param today the clinic's day
 * @param muscles identifiers that the content knows
 */
record SessionRules(ToxinInterval interval, LocalDate today, Set<String> muscles) {

    private static final int YEARS_BACK = 25;
    private static final int YEARS_AHEAD = 2;

    /**
     * The places that were typed.
     *
     * @param others days of the child's other sessions that are given or planned
     * @param physician whether the person may plan before the interval
     */
    List<Injection> check(SessionData data, Collection<LocalDate> others, boolean physician) {
        var problems = new ArrayList<Problem>();
        day(data, problems);
        places(data, problems);
        var texts = new TextBounds(problems);
        if (data.state() == State.GIVEN) {
            texts.needed("givenBy", "medicine.problem.given-by", data.givenBy(), ToxinSessions.NAME_MOST);
        } else {
            texts.atMost("givenBy", "medicine.problem.given-by", data.givenBy(), ToxinSessions.NAME_MOST);
        }
        if (data.state() == State.CANCELLED) {
            texts.needed("note", "medicine.problem.taken-back", data.note(), ToxinSessions.NOTE_MOST);
        } else {
            texts.atMost("note", "medicine.problem.note", data.note(), ToxinSessions.NOTE_MOST);
        }
        texts.atMost("early", "medicine.problem.early-long", data.early(), ToxinSessions.NOTE_MOST);
        if (data.state() == State.PLANNED) {
            early(data, others, physician, problems);
        }
        Invalid.ifAny(problems);
        return data.places().stream()
                .map(place -> new Injection(
                        place.muscle().orElseThrow(),
                        place.side().orElseThrow(),
                        new ToxinUnits(place.units().orElseThrow(), new Preparation(place.preparation()))))
                .toList();
    }

    private void day(SessionData data, List<Problem> problems) {
        if (data.state() == State.GIVEN
                && (data.on().isAfter(today) || data.on().isBefore(today.minusYears(YEARS_BACK)))) {
            problems.add(Problem.at("on", "medicine.problem.given-on", YEARS_BACK));
        }
        if (data.state() == State.PLANNED
                && (data.on().isBefore(today) || data.on().isAfter(today.plusYears(YEARS_AHEAD)))) {
            problems.add(Problem.at("on", "medicine.problem.planned-on", YEARS_AHEAD));
        }
    }

    private void places(SessionData data, List<Problem> problems) {
        var count = data.places().size();
        if (count > ToxinSessions.PLACES_MOST || (count == 0 && data.state() == State.GIVEN)) {
            problems.add(Problem.at("places", "medicine.problem.places", ToxinSessions.PLACES_MOST));
        }
        for (var number = 0; number < count; number++) {
            place(data.places().get(number), number, problems);
        }
    }

    private void place(PlaceData place, int number, List<Problem> problems) {
        if (place.muscle().filter(muscles::contains).isEmpty()) {
            problems.add(Problem.at("muscle" + number, "medicine.problem.muscle"));
        }
        if (place.side().isEmpty()) {
            problems.add(Problem.at("side" + number, "medicine.problem.side"));
        }
        if (!place.units().map(ToxinUnits::isPossible).orElse(false)) {
            problems.add(Problem.at("units" + number, "medicine.problem.units", ToxinUnits.MOST));
        }
        new TextBounds(problems)
                .needed(
                        "preparation" + number,
                        "medicine.problem.preparation",
                        place.preparation(),
                        ToxinSessions.PREPARATION_MOST);
    }

    private void early(SessionData data, Collection<LocalDate> others, boolean physician, List<Problem> problems) {
        interval.tooNear(data.on(), others).ifPresent(other -> {
            if (data.early().isBlank()) {
                problems.add(Problem.at("on", "medicine.problem.early", other, interval.days(), firstDay(other)));
            } else if (!physician) {
                problems.add(Problem.at("early", "medicine.problem.early-physician", firstDay(other)));
            }
        });
    }

    private LocalDate firstDay(LocalDate other) {
        return interval.notBefore(other);
    }
}
