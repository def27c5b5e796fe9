package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainMax;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.Rhythm.Spread;

/** The rules of a week told to a constraint solver that knows nothing of the planner (Choco). */
final class SolvedWeek {

    private static final int DAYS = 7;

    private final Weeks.Case one;
    private final Model model = new Model();
    /** By exercise and time. */
    private final BoolVar[][] in;
    /** By exercise and day. */
    private final BoolVar[][] on;

    SolvedWeek(Weeks.Case one) {
        this.one = one;
        var slots = one.week().slots();
        in = model.boolVarMatrix(one.asks().size(), slots.size());
        on = model.boolVarMatrix(one.asks().size(), DAYS);
        for (int a = 0; a < in.length; a++) {
            tell(a);
        }
        for (int s = 0; s < slots.size(); s++) {
            var slot = s;
            atMost(rows(a -> List.of(in[a][slot])), slots.get(s).minutes());
        }
        for (var day : DayOfWeek.values()) {
            if (one.week().most().containsKey(day)) {
                atMost(rows(a -> onDay(a, day)), one.week().most().get(day));
            }
        }
    }

    private interface Row {
        List<BoolVar> of(int ask);
    }

    private List<List<BoolVar>> rows(Row row) {
        var rows = new ArrayList<List<BoolVar>>();
        for (int a = 0; a < in.length; a++) {
            rows.add(row.of(a));
        }
        return rows;
    }

    private List<BoolVar> onDay(int ask, DayOfWeek day) {
        var slots = one.week().slots();
        var there = new ArrayList<BoolVar>();
        for (int s = 0; s < slots.size(); s++) {
            if (slots.get(s).day() == day) {
                there.add(in[ask][s]);
            }
        }
        return there;
    }

    private void atMost(List<List<BoolVar>> rows, int minutes) {
        var variables = new ArrayList<BoolVar>();
        var weights = new ArrayList<Integer>();
        for (int a = 0; a < rows.size(); a++) {
            for (var variable : rows.get(a)) {
                variables.add(variable);
                weights.add(one.asks().get(a).minutes());
            }
        }
        if (!variables.isEmpty()) {
            model.scalar(
                            variables.toArray(BoolVar[]::new),
                            weights.stream().mapToInt(i -> i).toArray(),
                            "<=",
                            minutes)
                    .post();
        }
    }

    private void tell(int a) {
        var ask = one.asks().get(a);
        var slots = one.week().slots();
        for (int s = 0; s < slots.size(); s++) {
            var helped = new HashSet<>(slots.get(s).helpers());
            helped.retainAll(ask.helpers());
            if (!ask.days().contains(slots.get(s).day()) || !ask.helpers().isEmpty() && helped.isEmpty()) {
                model.arithm(in[a][s], "=", 0).post();
            }
        }
        for (var day : DayOfWeek.values()) {
            var there = onDay(a, day).toArray(BoolVar[]::new);
            if (there.length == 0) {
                model.arithm(on[a][day.ordinal()], "=", 0).post();
            } else {
                model.sum(there, "<=", ask.timesADay()).post();
                model.max(on[a][day.ordinal()], there).post();
            }
        }
        model.sum(on[a], "<=", ask.rhythm().days()).post();
        if (ask.rhythm().spread() == Spread.NOT_FOLLOWING || ask.rhythm().spread() == Spread.ALTERNATE) {
            apart(a, a);
        }
        if (ask.rhythm().spread() == Spread.ALTERNATE) {
            model.table(on[a], everyOtherDay()).post();
        }
        for (int b = 0; b < in.length; b++) {
            var shared = new HashSet<>(ask.muscles());
            shared.retainAll(one.asks().get(b).muscles());
            if (!shared.isEmpty()) {
                apart(a, b);
            }
        }
    }

    private void apart(int a, int b) {
        for (int day = 0; day < DAYS; day++) {
            model.arithm(on[a][day], "+", on[b][(day + 1) % DAYS], "<=", 1).post();
        }
    }

    /** Days two apart, one after the other, from any first day. */
    private static Tuples everyOtherDay() {
        var tuples = new Tuples(true);
        tuples.add(new int[DAYS]);
        for (int first = 0; first < DAYS; first++) {
            for (int count = 1; count <= 3; count++) {
                var row = new int[DAYS];
                for (int i = 0; i < count; i++) {
                    row[(first + 2 * i) % DAYS] = 1;
                }
                tuples.add(row);
            }
        }
        return tuples;
    }

    private IntVar minutes(Priority priority) {
        var variables = new ArrayList<BoolVar>();
        var weights = new ArrayList<Integer>();
        for (int a = 0; a < in.length; a++) {
            if (one.asks().get(a).priority() == priority) {
                for (var variable : in[a]) {
                    variables.add(variable);
                    weights.add(one.asks().get(a).minutes());
                }
            }
        }
        if (variables.isEmpty()) {
            return model.intVar(0);
        }
        var sum = model.intVar("minutes " + priority, 0, 10_000);
        model.scalar(
                        variables.toArray(BoolVar[]::new),
                        weights.stream().mapToInt(i -> i).toArray(),
                        "=",
                        sum)
                .post();
        return sum;
    }

    /** The most minutes of each priority, the first before the second before the third. */
    List<Integer> most() {
        var found = new ArrayList<Integer>();
        var solver = model.getSolver();
        var all = new ArrayList<BoolVar>();
        for (int a = 0; a < in.length; a++) {
            all.addAll(List.of(in[a]));
        }
        solver.setSearch(Search.intVarSearch(
                new DomOverWDeg<>(all.toArray(BoolVar[]::new), 0), new IntDomainMax(), all.toArray(BoolVar[]::new)));
        for (var priority : Priority.values()) {
            var minutes = minutes(priority);
            var best = solver.findOptimalSolution(minutes, true);
            var most = best.getIntVal(minutes);
            found.add(most);
            solver.reset();
            model.arithm(minutes, "=", most).post();
        }
        return found;
    }

    /** Whether the week keeps all rules that the solver was told. */
    boolean allows(List<Placed> placed) {
        var slots = one.week().slots();
        for (int a = 0; a < in.length; a++) {
            for (int s = 0; s < slots.size(); s++) {
                var there = placed.contains(new Placed(
                        one.asks().get(a).exercise(),
                        slots.get(s).day(),
                        slots.get(s).start()));
                model.arithm(in[a][s], "=", there ? 1 : 0).post();
            }
        }
        return model.getSolver().solve();
    }
}
