package org.hearthway.pump.ui;

import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Bridge;
import org.hearthway.pump.engine.BridgePlan;

/** What a change of strength asks for: the bridge with its sums and hours, or what is missing for it. */
final class BridgeChecks {

    private final FormSay say;
    private final Runnable figures;

    /**
     * Ready to tell.
     *
     * @param figures opens the form for figures of the pump
     */
    BridgeChecks(FormSay say, Runnable figures) {
        this.say = say;
        this.figures = figures;
    }

    void add(CheckList list, BridgePlan plan) {
        if (plan instanceof BridgePlan.Missing missing) {
            var item = list.check(
                    false,
                    say.say("pump.form.bridge"),
                    say.say("pump.form.bridge.none"),
                    say.say("pump.form.bridge.missing"));
            missing.figures().stream()
                    .sorted()
                    .forEach(figure -> item.says(say.say("pump.form.bridge.missing." + figure)));
            item.with(Tags.button("text", say.say("pump.form.to-figures"), pressed -> figures.run()));
        } else if (plan instanceof BridgePlan.NotProgrammable fixed) {
            list.check(
                            false,
                            say.say("pump.form.bridge"),
                            say.say("pump.form.bridge.fixed"),
                            unbridged(fixed.meanwhile()))
                    .how(fixed.how());
        } else if (plan instanceof Bridge bridge) {
            bridge(list, bridge);
        }
    }

    private void bridge(CheckList list, Bridge bridge) {
        var item = list.check(
                false,
                say.say("pump.form.bridge"),
                say.say(
                        "pump.form.bridge.runs",
                        say.figures().result(bridge.drug()),
                        say.figures().result(bridge.lasts())),
                say.say("pump.form.bridge.how", say.figures().result(bridge.deadVolume())));
        item.says(say.say(
                "pump.form.bridge.rates",
                say.figures().result(bridge.during().perDay()),
                say.figures().result(bridge.afterwards().perDay())));
        if (!bridge.deliverable()) {
            item.says(say.say("pump.form.bridge.cannot"));
        }
        item.says(say.say("pump.form.bridge.without", unbridged(bridge.without())));
        item.with(new BridgeHours(say, bridge));
        item.says(say.say("pump.form.bridge.wrong", say.rules().deadVolumePercent()));
        for (var wrong : bridge.wrong()) {
            item.says(say.say(
                    wrong.tooMuch() ? "pump.form.bridge.wrong.more" : "pump.form.bridge.wrong.less",
                    say.figures().result(wrong.really()),
                    say.figures().result(wrong.lasts()),
                    say.figures().result(wrong.received()),
                    say.figures().result(wrong.wanted())));
        }
        item.how(bridge.how());
        item.says(say.say("pump.form.bridge.caution"));
    }

    private String unbridged(BridgePlan.Unbridged meanwhile) {
        return say.say(
                "pump.form.bridge.meanwhile",
                say.figures().result(meanwhile.received()),
                say.figures().result(meanwhile.percent()),
                say.figures().result(meanwhile.lasts()));
    }
}
