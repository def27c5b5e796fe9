package org.hearthway.pump.ui;

import org.hearthway.pump.PumpSums;
import org.hearthway.pump.PumpSums.Attention;
import org.hearthway.pump.engine.AfterFill;
import org.hearthway.pump.engine.Residual;

/** What was drawn out and filled in, against what was expected. */
final class FillChecks {

    private final FormSay say;

    FillChecks(FormSay say) {
        this.say = say;
    }

    void add(CheckList list, PumpSums sums) {
        sums.residual().ifPresent(residual -> residual(list, residual));
        sums.afterFill().ifPresent(after -> after(list, after));
        sums.mixture()
                .ifPresent(mixture -> list.told(
                                say.say("pump.form.check.mixture"),
                                say.figures().result(mixture.strength()),
                                say.say("pump.form.check.mixture.why"))
                        .how(mixture.how()));
        if (sums.attention().contains(Attention.DRUG_OUT_OF_DATE)) {
            list.check(
                    false,
                    say.say("pump.form.check.drug"),
                    say.say("pump.form.check.drug.old"),
                    say.say("pump.form.check.drug.why"));
        }
        if (sums.attention().contains(Attention.ATTEMPTS)) {
            list.check(
                    false,
                    say.say("pump.form.check.attempts"),
                    say.say("pump.form.check.attempts.many"),
                    say.say("pump.form.check.attempts.why"));
        }
    }

    private void residual(CheckList list, Residual residual) {
        var rules = residual.rules();
        var item = list.check(
                !residual.flagged(),
                say.say("pump.form.check.residual"),
                say.figures().signed(residual.difference()),
                say.say(
                        "pump.form.check.residual.rule." + rules.basis(),
                        say.figures().result(rules.volume()),
                        rules.percent()));
        if (residual.flagged()) {
            item.says(say.say("pump.form.check.residual.look." + residual.look()));
        }
        item.how(residual.how());
    }

    private void after(CheckList list, AfterFill after) {
        var item = list.check(
                !after.flagged(),
                say.say("pump.form.check.after"),
                say.figures().signed(after.difference()),
                say.say("pump.form.check.after.rule", say.figures().result(after.limit())));
        item.says(say.say(
                "pump.form.check.after.sum",
                say.figures().figure(after.injected()),
                say.figures().figure(after.measured())));
        if (after.flagged()) {
            item.says(say.say("pump.form.check.after.look"));
        }
    }
}
