package org.hearthway.pump.engine;

import java.time.Instant;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was used up to a moment, line by line: one line for each programming, one for what was left. */
final class Usage {

    private Usage() {}

    /** What is left at a moment. */
    static Volume left(Reservoir reservoir, Instant moment, Derivation.Working working) {
        var nodes = reservoir.nodes();
        var left = reservoir.filling().volume();
        for (var i = 0; i < nodes.size() && nodes.get(i).at().isBefore(moment); i++) {
            var until = i + 1 < nodes.size() ? earlier(nodes.get(i + 1).at(), moment) : moment;
            left = after(nodes.get(i), until, working);
        }
        return left;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private static Volume after(Reservoir.Node node, Instant until, Derivation.Working working) {
        var program = node.program();
        var strength = Symbol.STRENGTH.is(program.strength());
        var dose = Symbol.DAILY_DOSE.is(program.dosing().perDay(program.strength()));
        var time = Elapsed.between(node.at(), until);
        var used = program.used(node.at(), until);
        if (program.dosing().followsTheClock()) {
            var whole = program.dosing().wholeDays(time);
            var rest = new Mass(program.given(node.at(), until)
                    .exact()
                    .subtract(
                            program.dosing().perDay(program.strength()).exact().multiply(BigFraction.of(whole))));
            working.line(
                    Formula.USED_BY_SCHEDULE,
                    Symbol.USED,
                    used,
                    Symbol.WHOLE_DAYS.is(Amount.count(whole, Unit.DAYS)),
                    dose,
                    Symbol.REST.is(rest),
                    strength);
        } else {
            working.line(Formula.USED, Symbol.USED, used, dose, Symbol.DAYS.is(time.inDays()), strength);
        }
        return working.line(
                Formula.LEFT,
                Symbol.VOLUME,
                node.volume().less(used),
                Symbol.VOLUME.is(node.volume()),
                Symbol.USED.is(used));
    }
}
