package org.hearthway.pump.ui;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Reservoir;

/**
 * The moments that a table of the forecast tells.
 *
 * @param forClinicians whether the day on which nothing is left is told
 */
record ForecastRows(PumpFigures figures, Reservoir reservoir, RefillWindow window, Instant now, boolean forClinicians) {

    private static final Duration A_WEEK = Duration.ofDays(7);
    private static final int MOST_WEEKS = 30;

    /** What is to be said of each moment, in their order. */
    SortedMap<Instant, List<String>> all() {
        var say = figures.words();
        var all = new TreeMap<Instant, List<String>>();
        var filled = reservoir.filling().at();
        note(all, filled, say.say("pump.chart.table.filled"));
        reservoir.nodes().stream().skip(1).forEach(node -> note(all, node.at(), say.say("pump.chart.table.changed")));
        note(all, now, say.say("pump.chart.table.today"));
        note(all, noon(window.opens()), say.say("pump.chart.table.opens"));
        note(all, noon(window.day()), say.say("pump.chart.table.latest"));
        reservoir.alarm().ifPresent(alarm -> note(all, alarm.at(), say.say("pump.chart.table.alarm")));
        window.printOut().ifPresent(check -> note(all, noon(check.printed()), say.say("pump.chart.table.printed")));
        reservoir
                .empty()
                .filter(empty -> forClinicians)
                .ifPresent(empty -> note(all, empty.at(), say.say("pump.chart.table.empty")));
        var end = reservoir.empty().map(Reservoir.Reached::at).orElse(noon(window.lifeEnds()));
        var week = filled.plus(A_WEEK);
        for (var i = 0; i < MOST_WEEKS && week.isBefore(end); i++) {
            all.putIfAbsent(week, List.of());
            week = week.plus(A_WEEK);
        }
        return all;
    }

    private static void note(SortedMap<Instant, List<String>> all, Instant at, String says) {
        var words = new ArrayList<>(all.getOrDefault(at, List.of()));
        words.add(says);
        all.put(at, words);
    }

    /** A day is told by its noon; the fill's own day by the fill. */
    private Instant noon(LocalDate day) {
        var noon = day.atTime(12, 0).atZone(figures.zone()).toInstant();
        return noon.isBefore(reservoir.filling().at()) ? reservoir.filling().at() : noon;
    }
}
