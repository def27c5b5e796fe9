package org.hearthway.pump.engine;

import java.time.Instant;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was used up to a moment, line by line: one line for each programming, one for what was left. */
final class Usage {

    private Usage() {}

    /** What is left at a moment. */
    static Volume left(Reservoir reservoir, Instant moment, Derivation.Working working) {
        var nodes = reservoir.nodes();
        for (var i = 0; i < nodes.size() && nodes.get(i).at().isBefore(moment); i++) {
            var until = i + 1 < nodes.size() ? earlier(nodes.get(i + 1).at(), moment) : moment;
            tell(nodes.get(i), until, working);
        }
        return reservoir.at(moment);
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private static void tell(Reservoir.Node node, Instant until, Derivation.Working working) {
        var program = node.program();
        var strength = Symbol.STRENGTH.is(program.strength());
        var rate = program.dosing().perDay(program.strength());
        var dose = Symbol.DAILY_DOSE.is(rate);
        var time = Elapsed.between(node.at(), until);
        var used = program.used(node.at(), until);
        if (program.dosing().followsTheClock()) {
            var whole = program.dosing().wholeDays(time);
            var inWhole = rate.exact().multiply(BigFraction.of(whole));
            var rest = new Mass(program.given(node.at(), until).exact().subtract(inWhole));
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
        working.line(
                Formula.LEFT,
                Symbol.VOLUME,
                node.volume().less(used),
                Symbol.VOLUME.is(node.volume()),
                Symbol.USED.is(used));
    }
}
