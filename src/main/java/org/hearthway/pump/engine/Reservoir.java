package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * A reservoir from one fill on: how it was filled, and every programming since. What lies in the future is what it will
 * do if nobody changes anything. Never altered; {@link #then} gives another one.
 */
public final class Reservoir {

    /**
     * A moment at which something changed.
     *
     * @param at the fill or a programming
     * @param volume what was in the reservoir then
     * @param program what ran from then on
     */
    public record Node(Instant at, Volume volume, Program program) {}

    /**
     * When a volume is reached.
     *
     * @param at the last nanosecond that is not later
     * @param sinceFill exactly
     */
    public record Reached(Instant at, Elapsed sinceFill) {}

    private final PumpModel pump;
    private final Filling filling;
    private final List<Node> nodes;

    private Reservoir(PumpModel pump, Filling filling, List<Node> nodes) {
        this.pump = pump;
        this.filling = filling;
        this.nodes = List.copyOf(nodes);
    }

    /**
     * A pump that was filled.
     *
     * @param program what runs after the fill; it may have been programmed earlier, or with the fill
     * @throws Invalid when more was filled than it holds, the program is later than the fill, or the pump cannot be
     *     programmed so
     */
    public static Reservoir filled(PumpModel pump, Filling filling, Program program) {
        if (filling.volume().compareTo(pump.reservoir()) > 0) {
            throw new Invalid(Problem.at(
                    "volume", "pump.problem.overfilled", pump.reservoir().rounded(4)));
        }
        if (program.from().isAfter(filling.at())) {
            throw new Invalid(Problem.at("from", "pump.problem.program-late"));
        }
        return new Reservoir(
                pump, filling, List.of(new Node(filling.at(), filling.volume(), programmable(pump, program))));
    }

    /**
     * The same reservoir with another programming after the last one. At the same minute, the later one counts.
     *
     * @throws Invalid when it is earlier than the last one, or the pump cannot be programmed so
     */
    public Reservoir then(Program program) {
        if (program.from().isBefore(last().at())) {
            throw new Invalid(Problem.at("from", "pump.problem.program-early"));
        }
        var more = new ArrayList<>(nodes);
        more.add(new Node(program.from(), at(program.from()), programmable(pump, program)));
        return new Reservoir(pump, filling, more);
    }

    private static Program programmable(PumpModel pump, Program program) {
        var fixed = pump.fixedFlow();
        if (fixed.isPresent() && !program.dosing().equals(Dosing.fixedFlow(fixed.get()))) {
            throw new Invalid(Problem.at("dosing", "pump.problem.fixed-rate"));
        }
        return program;
    }

    /**
     * The same reservoir as somebody sees it who knows only what it held at a moment, and what was programmed since.
     *
     * @throws Invalid when the moment lies before the fill
     */
    public Reservoir seenFrom(Instant moment) {
        var later = new ArrayList<Node>();
        later.add(new Node(moment, at(moment), programAt(moment)));
        nodes.stream().filter(node -> node.at().isAfter(moment)).forEach(later::add);
        return new Reservoir(pump, filling, later);
    }

    /** The pump. */
    public PumpModel pump() {
        return pump;
    }

    /** The fill. */
    public Filling filling() {
        return filling;
    }

    /** The fill and every programming since, oldest first. */
    public List<Node> nodes() {
        return nodes;
    }

    /** The last of {@link #nodes}. */
    public Node last() {
        return nodes.get(nodes.size() - 1);
    }

    /**
     * What is in it at a moment: what is expected at a refill. Never less than nothing.
     *
     * @throws Invalid when the moment lies before the fill
     */
    public Volume at(Instant moment) {
        var node = nodeAt(moment);
        return node.volume().less(node.program().used(node.at(), moment));
    }

    /**
     * What runs at a moment.
     *
     * @throws Invalid when the moment lies before the fill
     */
    public Program programAt(Instant moment) {
        return nodeAt(moment).program();
    }

    Node nodeAt(Instant moment) {
        var found = nodes.get(0);
        if (moment.isBefore(found.at())) {
            throw new Invalid(Problem.at("at", "pump.problem.before-fill"));
        }
        for (var node : nodes) {
            if (!node.at().isAfter(moment)) {
                found = node;
            }
        }
        return found;
    }

    /** When the low-reservoir alarm sounds; at the fill, when it holds no more than that; empty when it never does. */
    public Optional<Reached> alarm() {
        return reaches(pump.alarm());
    }

    /** When nothing is left; empty when that never comes. */
    public Optional<Reached> empty() {
        return reaches(Volume.NONE);
    }

    /** When it holds a volume or less for the first time; empty when that never comes. */
    public Optional<Reached> reaches(Volume volume) {
        for (var i = 0; i < nodes.size(); i++) {
            var node = nodes.get(i);
            var left = node.volume().less(volume);
            var needed = node.program().until(node.at(), left);
            var until = i + 1 < nodes.size()
                    ? Optional.of(Elapsed.between(node.at(), nodes.get(i + 1).at()))
                    : Optional.<Elapsed>empty();
            if (needed.isPresent()
                    && until.map(end -> needed.get().compareTo(end) <= 0).orElse(true)) {
                return Optional.of(reached(node, needed.get()));
            }
        }
        return Optional.empty();
    }

    private Reached reached(Node node, Elapsed needed) {
        var since = Elapsed.between(filling.at(), node.at());
        return new Reached(needed.after(node.at()), Elapsed.hours(since.exact().add(needed.exact())));
    }

    /** Time from a moment until the alarm; nothing when it has sounded, empty when it never does. */
    public Optional<Elapsed> leftToAlarm(Instant now) {
        return alarm().map(reached -> left(reached, now));
    }

    /** Time from a moment until nothing is left; nothing when it is empty, empty when that never comes. */
    public Optional<Elapsed> leftToEmpty(Instant now) {
        return empty().map(reached -> left(reached, now));
    }

    private Elapsed left(Reached reached, Instant now) {
        var left = reached.sinceFill()
                .exact()
                .subtract(Elapsed.between(filling.at(), now).exact());
        return left.signum() < 0 ? Elapsed.NONE : Elapsed.hours(left);
    }
}
