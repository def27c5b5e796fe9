package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Told;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Decision;
import org.hearthway.path.Plans.Effect;
import org.hearthway.path.Plans.Outlook;
import org.hearthway.path.Plans.Start;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Span;
import org.hearthway.words.Words;

/** The forms for decisions that are about no single stage of a child's paths. */
record DecisionForms(
        StageWords say,
        Words words,
        Plans plans,
        PathDevices devices,
        Viewer.Person viewer,
        ChildId child,
        LocalDate today,
        Page page) {

    /** What the forms ask of the page they stand on. */
    interface Page {
        /** The version of the plans that it shows. */
        long seen();

        /** Says that it was done, by the key of the words, and shows the plans anew. */
        void done(String says);

        /** Drops everything typed. */
        void leave();
    }

    /** Begins a path; another one where the child is on a path already. */
    Component begin(boolean another) {
        return new BeginForm(say, words, plans.pathways(), another, today, new BeginForm.Acts() {
            private long seen = page.seen();

            @Override
            public Outlook outlook(Start start) {
                var would = plans.outlook(viewer, child, start);
                seen = would.version();
                return would;
            }

            @Override
            public void begin(Start start, String reason) {
                try {
                    plans.begin(viewer, child, start, reason, seen);
                    page.done("path.begin.done");
                } catch (Overtaken overtaken) {
                    Told.couldNot(say.say("path.change.overtaken"));
                }
            }

            @Override
            public void leave() {
                page.leave();
            }
        });
    }

    /** Says when a stage was done that was done before the path began here. */
    Component doneBefore(Plan plan, Stage stage) {
        var path = plan.template().id();
        var name = stage.name().in(viewer.language());
        var day = new DayField(say.say("path.before.day"), words, viewer.language());
        var says = new EffectForm.Says(
                say.say("path.before.give", name), say.say("path.before.give.hint"), say.say("path.change.save"));
        return new EffectForm(say, words, says, List.of(new EffectForm.Asked("day", day)), today, new Deciding() {
            @Override
            public Effect effect(List<LocalDate> days) {
                return plans.preview(viewer, child, path, new Change.Fix(stage.id(), days.get(0)))
                        .effect();
            }

            @Override
            void decide(List<LocalDate> days, String reason) {
                plans.apply(viewer, child, path, new Change.Fix(stage.id(), days.get(0)), reason, page.seen());
            }
        });
    }

    /** Ends a path. */
    Component close(Plan plan) {
        var path = plan.template().id();
        var day = new DayField(say.say("path.close.day"), words, viewer.language());
        day.setValue(today);
        var says = new EffectForm.Says(
                say.say("path.close", plan.template().name().in(viewer.language())),
                say.say("path.close.hint"),
                say.say("path.close.save"));
        var asked = List.of(new EffectForm.Asked("day", day));
        var form = new EffectForm(say, words, says, asked, today, new Deciding() {
            @Override
            public Effect effect(List<LocalDate> days) {
                return plans.effectOfClosing(viewer, child, path, days.get(0));
            }

            @Override
            void decide(List<LocalDate> days, String reason) {
                plans.close(viewer, child, path, days.get(0), reason, page.seen());
            }
        });
        return devices.held(viewer, child, path)
                .map(kind -> form.noting(new DeviceLine(say, child).closing(kind)))
                .orElse(form);
    }

    /** Keeps days on which the family cannot come. */
    Component away() {
        var says = new EffectForm.Says(say.say("path.away"), say.say("path.away.hint"), say.say("path.away.save"));
        var asked = List.of(
                new EffectForm.Asked("from", new DayField(say.say("path.away.from"), words, viewer.language())),
                new EffectForm.Asked("until", new DayField(say.say("path.away.until"), words, viewer.language())));
        return new EffectForm(say, words, says, asked, today, new Deciding() {
            @Override
            public Effect effect(List<LocalDate> days) {
                return plans.effectOfAway(viewer, child, span(days));
            }

            @Override
            void decide(List<LocalDate> days, String reason) {
                plans.away(viewer, child, span(days), reason, page.seen());
            }
        });
    }

    private static Span span(List<LocalDate> days) {
        if (days.get(1).isBefore(days.get(0))) {
            throw new Invalid(Problem.at("until", "path.problem.away-order"));
        }
        return new Span(days.get(0), days.get(1));
    }

    /** Takes a decision back. */
    Component takeBack(Decision decision) {
        var says = new EffectForm.Says(
                say.say("path.take-back", decision.name().in(viewer.language())),
                say.say("path.take-back.hint"),
                say.say("path.decided.take-back"));
        return new EffectForm(say, words, says, List.of(), today, new Deciding() {
            @Override
            public Effect effect(List<LocalDate> days) {
                return plans.effectOfUndo(viewer, child, decision.version());
            }

            @Override
            void decide(List<LocalDate> days, String reason) {
                plans.undo(viewer, child, decision.version(), reason, page.seen());
            }
        });
    }

    private abstract class Deciding implements EffectForm.Acts {

        abstract void decide(List<LocalDate> days, String reason);

        @Override
        public void save(List<LocalDate> days, String reason) {
            try {
                decide(days, reason);
                page.done("path.change.done");
            } catch (Overtaken overtaken) {
                Told.couldNot(say.say("path.change.overtaken"));
            }
        }

        @Override
        public void leave() {
            page.leave();
        }
    }
}
