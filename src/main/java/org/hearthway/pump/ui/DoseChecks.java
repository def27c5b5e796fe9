package org.hearthway.pump.ui;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.pump.PumpSums;
import org.hearthway.pump.engine.Deliverable;
import org.hearthway.pump.engine.DoseContext;
import org.hearthway.pump.engine.DoseStep;
import org.hearthway.pump.engine.DoseStep.Finding;
import org.hearthway.pump.engine.DoseStep.Kind;

/** A dose against the one before, against what is usual, and whether the pump can give it. */
final class DoseChecks {

    private static final Set<Kind> OF_SIZE = EnumSet.of(Kind.SMALLER_STEP, Kind.LARGER_STEP, Kind.MAY_BE_TOO_MUCH);
    private static final Set<Kind> OF_TIME = EnumSet.of(Kind.IN_THE_FIRST_DAY, Kind.AGAIN_WITHIN_A_DAY);

    private final FormSay say;

    DoseChecks(FormSay say) {
        this.say = say;
    }

    void add(CheckList list, PumpSums sums) {
        sums.total()
                .ifPresent(total -> list.told(
                                say.say("pump.form.check.total"),
                                say.figures().result(total.dose()),
                                say.say("pump.dosing.mode." + say.rules().bolus()))
                        .how(total.how()));
        sums.step().ifPresent(step -> step(list, step));
        sums.conversion()
                .ifPresent(units -> list.told(
                                say.say("pump.form.check.conversion"),
                                say.figures().result(units.dailyVolume()),
                                "")
                        .how(units.how()));
        sums.deliverable().ifPresent(can -> deliverable(list, can));
    }

    private void step(CheckList list, DoseStep step) {
        var phase = step.who().phase() == DoseContext.Phase.FINDING ? "FINDING" : "UPKEEP";
        findings(
                        list.check(
                                passes(step, OF_SIZE),
                                say.say("pump.form.check.step"),
                                say.figures().signed(step.percent()),
                                say.say(
                                        (step.percent().exact().signum() < 0
                                                        ? "pump.form.check.step.down."
                                                        : "pump.form.check.step.up.")
                                                + phase,
                                        step.who().years(),
                                        step.usual().least(),
                                        step.usual().most())),
                        step,
                        OF_SIZE)
                .how(step.how());
        findings(
                list.check(
                        passes(step, OF_TIME),
                        say.say("pump.form.check.again"),
                        say.say("pump.form.check.again.count", step.increasesWithinADay()),
                        say.say("pump.form.check.again.rule")),
                step,
                OF_TIME);
        var others = EnumSet.complementOf(EnumSet.copyOf(OF_SIZE));
        others.removeAll(OF_TIME);
        findings(
                list.check(
                        passes(step, others),
                        say.say("pump.form.check.range"),
                        say.figures().result(step.to()),
                        say.say(
                                "pump.form.check.range.rule",
                                say.figures().result(step.trials().least()),
                                say.figures().result(step.trials().most()))),
                step,
                others);
    }

    private static boolean passes(DoseStep step, Set<Kind> kinds) {
        return step.findings().stream().map(Finding::kind).noneMatch(kinds::contains);
    }

    private CheckList.Item findings(CheckList.Item item, DoseStep step, Set<Kind> kinds) {
        step.findings().stream()
                .filter(finding -> kinds.contains(finding.kind()))
                .forEach(finding -> item.says(say.say(
                        "pump.form.finding." + finding.kind(),
                        finding.figures().stream().map(say.figures()::result).toArray())));
        return item;
    }

    private void deliverable(CheckList list, Deliverable can) {
        var range = say.say(
                "pump.form.check.deliverable.rule",
                say.figures().result(can.range().least().perDay()),
                say.figures().result(can.range().most().perDay()));
        var outside = can.outside().stream()
                .map(flow -> say.figures().result(flow.flow().perDay()))
                .collect(Collectors.joining(", "));
        list.check(
                can.holds(),
                say.say("pump.form.check.deliverable"),
                can.holds()
                        ? say.say("pump.form.check.deliverable.yes")
                        : say.say("pump.form.check.deliverable.no", outside),
                range);
    }
}
