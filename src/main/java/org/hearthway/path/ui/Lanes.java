package org.hearthway.path.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;

/** The stages of a child's plans, each plan a lane, on one scale of time: a day lies at the same place in all. */
final class Lanes {

    /** A stage in its lane, and how far to the right it lies. */
    record Placed(Planned stage, double x) {}

    /** One plan's stages, from left to right. */
    record Lane(Plan plan, List<Placed> placed) {}

    /** A stage and the day it is drawn at: the present one lies at today. */
    private record Stone(Planned stage, LocalDate day) {}

    private final List<Lane> all = new ArrayList<>();
    private final List<LocalDate> days = new ArrayList<>();
    private final Map<LocalDate, Integer> places = new HashMap<>();
    private final TimeScale scale;

    /**
     * Lays them out.
     *
     * @param plans at least one
     * @param zoom how much is seen
     * @param left where the first day lies
     * @param width how far the last lies from it
     * @param gap least distance between two stones where there is one lane
     */
    Lanes(List<Plan> plans, Zoom zoom, double left, double width, double gap) {
        var seen = plans.stream().map(plan -> stones(plan, zoom)).toList();
        var times = times(seen);
        var today = plans.get(0).today();
        zoom.window(today).ifPresent(window -> {
            times.putIfAbsent(window.first(), 1);
            times.putIfAbsent(window.last(), 1);
        });
        times.putIfAbsent(today, 1);
        times.forEach((day, many) -> {
            places.put(day, days.size());
            for (int i = 0; i < many; i++) {
                days.add(day);
            }
        });
        scale = new TimeScale(days, left, width, gap / plans.size());
        for (int at = 0; at < plans.size(); at++) {
            all.add(new Lane(plans.get(at), placed(seen.get(at))));
        }
    }

    private static List<Stone> stones(Plan plan, Zoom zoom) {
        var window = zoom.window(plan.today());
        return plan.until(plan.today().plusYears(StageTable.YEARS_AHEAD)).stream()
                .map(stage -> new Stone(stage, stage.state() == State.NOW ? plan.today() : stage.start()))
                .filter(stone -> window.isEmpty() || window.get().holds(stone.day()))
                .sorted(Comparator.comparing(Stone::day))
                .toList();
    }

    /** How many stones need room on each day, soonest first: as many as the lane with the most of them has. */
    private static Map<LocalDate, Integer> times(List<List<Stone>> lanes) {
        var most = new TreeMap<LocalDate, Integer>();
        for (var lane : lanes) {
            var own = new HashMap<LocalDate, Integer>();
            lane.forEach(stone -> own.merge(stone.day(), 1, Integer::sum));
            own.forEach((day, many) -> most.merge(day, many, Math::max));
        }
        return most;
    }

    private List<Placed> placed(List<Stone> lane) {
        var placed = new ArrayList<Placed>();
        var used = new HashMap<LocalDate, Integer>();
        for (var stone : lane) {
            var nth = used.merge(stone.day(), 1, Integer::sum) - 1;
            var place = Objects.requireNonNull(places.get(stone.day())) + nth;
            placed.add(new Placed(stone.stage(), scale.ofStone(place)));
        }
        return placed;
    }

    List<Lane> all() {
        return all;
    }

    LocalDate first() {
        return days.get(0);
    }

    LocalDate last() {
        return days.get(days.size() - 1);
    }

    /** Where a day lies; days beyond the ends lie at the ends. */
    double of(LocalDate day) {
        return scale.of(day);
    }
}
