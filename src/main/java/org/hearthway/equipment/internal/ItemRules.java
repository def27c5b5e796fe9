package org.hearthway.equipment.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Kind;

/** What may be entered about a splint or a piece of equipment; the field of a look ends with its place, from 0. */
final class ItemRules {

    /** Longest time between two looks, in days. */
    static final int LONGEST_INTERVAL = 400;

    private static final int TEXT = 500;
    private static final int HOURS = 24;
    private static final int YEARS = 25;

    private ItemRules() {}

    static void check(Item.Data data, List<Kind> known, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (known.stream().noneMatch(kind -> kind.id().equals(data.kind()))) {
            problems.add(Problem.at("kind", "equipment.problem.kind"));
        }
        if (data.given().isAfter(today) || data.given().isBefore(today.minusYears(YEARS))) {
            problems.add(Problem.at("given", "equipment.problem.given", YEARS));
        }
        if (data.lentUntil().filter(until -> until.isBefore(data.given())).isPresent()) {
            problems.add(Problem.at("lentUntil", "equipment.problem.lent"));
        }
        if (data.back()
                .filter(back -> back.isAfter(today) || back.isBefore(data.given()))
                .isPresent()) {
            problems.add(Problem.at("back", "equipment.problem.back"));
        }
        hours("byDay", data.wear().byDay(), problems);
        hours("byNight", data.wear().byNight(), problems);
        text("schedule", data.wear().schedule(), problems);
        text("buildUp", data.wear().buildUp(), problems);
        interval("skinEvery", data.skinEvery(), problems);
        interval("growthEvery", data.growthEvery(), problems);
        for (var place = 0; place < data.looks().size(); place++) {
            look(data.looks().get(place), data.given(), today, place, problems);
        }
        Invalid.ifAny(problems);
    }

    private static void look(Item.Look look, LocalDate given, LocalDate today, int place, List<Problem> problems) {
        if (look.day().isAfter(today) || look.day().isBefore(given)) {
            problems.add(Problem.at("day" + place, "equipment.problem.look"));
        }
        if (look.next().filter(next -> !next.isAfter(look.day())).isPresent()) {
            problems.add(Problem.at("next" + place, "equipment.problem.next"));
        }
        text("note" + place, look.note(), problems);
    }

    private static void hours(String field, Optional<Integer> hours, List<Problem> problems) {
        if (hours.filter(typed -> typed < 0 || typed > HOURS).isPresent()) {
            problems.add(Problem.at(field, "equipment.problem.hours", HOURS));
        }
    }

    private static void interval(String field, Optional<Integer> days, List<Problem> problems) {
        if (days.filter(typed -> typed < 1 || typed > LONGEST_INTERVAL).isPresent()) {
            problems.add(Problem.at(field, "equipment.problem.interval", LONGEST_INTERVAL));
        }
    }

    private static void text(String field, String text, List<Problem> problems) {
        if (text.strip().length() > TEXT) {
            problems.add(Problem.at(field, "equipment.problem.text", TEXT));
        }
    }
}
