package org.hearthway.program.engine.week;

import java.util.ArrayList;
import java.util.List;

/** Tries every week there is, one exercise after the other, and keeps the cheapest: for small cases. */
final class EveryWeek {

    private final Weeks.Case one;
    private final List<List<List<Placed>>> choices = new ArrayList<>();
    private WeekCost best;

    private EveryWeek(Weeks.Case one) {
        this.one = one;
        for (var ask : one.asks()) {
            choices.add(choices(ask));
        }
    }

    /** The cheapest cost of all weeks in which everything holds that must. */
    static WeekCost best(Weeks.Case one) {
        var search = new EveryWeek(one);
        search.fill(0, List.of());
        return search.best;
    }

    /** Every set of times that the exercise may be in by itself. */
    private List<List<Placed>> choices(Ask ask) {
        var slots = one.week().slots();
        var found = new ArrayList<List<Placed>>();
        for (int bits = 0; bits < 1 << slots.size(); bits++) {
            var placed = new ArrayList<Placed>();
            for (int i = 0; i < slots.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    placed.add(new Placed(
                            ask.exercise(), slots.get(i).day(), slots.get(i).start()));
                }
            }
            if (Weeks.broken(one.week(), List.of(ask), placed).isEmpty()) {
                found.add(placed);
            }
        }
        return found;
    }

    private void fill(int ask, List<Placed> placed) {
        if (!Weeks.broken(one.week(), one.asks(), placed).isEmpty()) {
            return;
        }
        if (ask == choices.size()) {
            var cost = WeekCost.of(one.asks(), one.last(), placed);
            best = best == null || cost.compareTo(best) < 0 ? cost : best;
            return;
        }
        for (var choice : choices.get(ask)) {
            var more = new ArrayList<>(placed);
            more.addAll(choice);
            fill(ask + 1, more);
        }
    }
}
