package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.List;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.engine.Plan;
import org.hearthway.words.Words;

/** What can be said of a child's paths while no stage is chosen: another path, days away, an end, stages not dated. */
final class PathChoices extends Div {

    /** What the choices ask of the page they stand on. */
    interface Page {
        /** Shows a form in the place of the choices. */
        void open(Component form);

        /** What forms about a stage of a path ask for. */
        ChangeForm.Acts acts(ChildPlan on);
    }

    private final transient StageWords say;
    private final transient Words words;
    private final transient List<ChildPlan> goingOn;
    private final transient DecisionForms forms;
    private final transient Page page;

    /**
     * Draws them.
     *
     * @param goingOn the child's paths that are not over
     */
    PathChoices(StageWords say, Words words, List<ChildPlan> goingOn, DecisionForms forms, Page page) {
        this.say = say;
        this.words = words;
        this.goingOn = goingOn;
        this.forms = forms;
        this.page = page;
        add(choose());
        goingOn.forEach(on -> {
            doneBefore(on.plan());
            notOnPlan(on);
        });
    }

    private Component choose() {
        var acts = Tags.div(
                "hw-offers",
                Tags.button("plain", say.say("path.begin.other"), pressed -> page.open(forms.begin(true))),
                Tags.button("plain", say.say("path.away"), pressed -> page.open(forms.away())));
        goingOn.stream().map(ChildPlan::plan).forEach(plan -> {
            var name = plan.template().name().in(say.language());
            acts.add(Tags.button("plain", say.say("path.close", name), pressed -> page.open(forms.close(plan))));
        });
        return Tags.div(
                "hw-sheet u-edged u-onpaper",
                Tags.div("hw-colh", Tags.h2("", say.say("path.choose"))),
                Tags.p("hw-quiet u-mb3", say.say("path.choose.hint")),
                acts);
    }

    /** Stages that were done before the path began here, each a press away from its day. */
    private void doneBefore(Plan plan) {
        if (!plan.before().isEmpty()) {
            add(new StageOffers(
                    say,
                    titled(say, "path.before.title", plan, goingOn),
                    say.say("path.before.hint"),
                    plan.before(),
                    say.say("path.before.day.known"),
                    stage -> page.open(forms.doneBefore(plan, stage))));
        }
    }

    /** Stages that come on the plan only if needed, and those that were taken from it. */
    private void notOnPlan(ChildPlan on) {
        var plan = on.plan();
        var stages = plan.template().stages().stream()
                .filter(stage ->
                        plan.stage(stage.id()).isEmpty() && !plan.before().contains(stage))
                .toList();
        if (!stages.isEmpty()) {
            add(new StageOffers(
                    say,
                    titled(say, "path.not-on-plan", plan, goingOn),
                    "",
                    stages,
                    say.say("path.add"),
                    stage -> page.open(new ReadyForm(
                            say,
                            words,
                            stage.name().in(say.language()),
                            new Change.Add(stage.id()),
                            say.say("path.add.save"),
                            page.acts(on)))));
        }
    }

    /** A title, with the path's name where the child is on several. */
    static String titled(StageWords say, String key, Plan plan, List<ChildPlan> goingOn) {
        var title = say.say(key);
        return goingOn.size() > 1 ? say.say("path.of", title, plan.template().name()) : title;
    }
}
