package org.hearthway.task.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Article;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.task.Task;
import org.hearthway.task.TaskWords;
import org.hearthway.words.Words;

/** One task in the folder: what, by when, for whom, who gave it, and what can be done with it. */
final class TaskCard extends Article {

    /** What can be done with a task. */
    interface Acts {
        void done(Task task);

        void notNeeded(Task task);

        void setAside(Task task);

        void change(Task task);

        void takeBack(Task task);
    }

    /**
     * What a card is told with.
     *
     * @param stages the stages of the path, by their names in tasks
     */
    record Telling(
            Words words,
            Viewer.Person viewer,
            TaskWords taskWords,
            ZoneId zone,
            LocalDate today,
            Map<String, String> stages) {

        String say(String key, Object... args) {
            return words.say(viewer.language(), key, args);
        }

        private String day(LocalDate day) {
            return day.getYear() == today.getYear()
                    ? words.date(viewer.language(), day)
                    : words.dateWithYear(viewer.language(), day);
        }
    }

    private final transient Telling telling;

    TaskCard(Telling telling, Task task, Optional<Acts> acts) {
        this.telling = telling;
        addClassName("hw-task");
        if (task.end().isPresent()) {
            addClassName("over");
        }
        var language = telling.viewer().language();
        var said = Tags.p("says", task.says().in(language));
        said.getElement().setAttribute("lang", task.says().shownIn(language).tag());
        add(
                Tags.div("line", Tags.span("hw-label " + style(task), standing(task)), to(task)),
                said,
                Tags.p("hw-sub", given(task)));
        task.aside()
                .filter(away -> away.until().isAfter(telling.today()))
                .ifPresent(away ->
                        add(Tags.p("hw-sub", telling.say("task.is.aside", telling.day(away.until()), away.reason()))));
        if (!task.isOnPlan()) {
            add(Tags.p("hw-sub", telling.say("task.is.off-plan")));
        }
        task.end().ifPresent(end -> add(Tags.p("hw-sub", end(end))));
        acts.ifPresent(act -> add(buttons(task, act)));
    }

    private String style(Task task) {
        if (task.end().isPresent()) {
            return "moss";
        }
        return isLate(task) ? "ember" : "line";
    }

    private boolean isLate(Task task) {
        return task.isOnPlan() && task.wantedBy().isBefore(telling.today());
    }

    private String standing(Task task) {
        return task.end()
                .map(end -> telling.say("task.is." + end.outcome()))
                .orElseGet(
                        () -> telling.say(isLate(task) ? "task.is.late" : "task.is.by", telling.day(task.wantedBy())));
    }

    private Component to(Task task) {
        var icon = task.to().isOfTheFamily() ? Icon.TODAY : Icon.PERSON;
        var to = Tags.span("to", icon.draw("sm"));
        to.add(Tags.span("", telling.taskWords().to(telling.viewer(), task.to())));
        return to;
    }

    private String given(Task task) {
        var by = task.isAskedByItsStage()
                ? telling.say("task.asked-by-path")
                : telling.say(
                        "task.given",
                        telling.taskWords().name(telling.viewer(), task.givenBy()),
                        telling.day(LocalDate.ofInstant(task.givenAt(), telling.zone())));
        return task.stage()
                .map(stage ->
                        by + " " + telling.say("task.of.stage", telling.stages().getOrDefault(stage, stage)))
                .orElse(by);
    }

    private String end(Task.End end) {
        var who = telling.taskWords().name(telling.viewer(), end.by());
        var at = telling.day(LocalDate.ofInstant(end.at(), telling.zone()));
        if (end.outcome() == Task.Outcome.NOT_NEEDED) {
            return telling.say("task.end.not-needed", who, at, end.reason());
        }
        return telling.say(end.ticked() ? "task.end.ticked" : "task.end.done", who, at);
    }

    private Component buttons(Task task, Acts acts) {
        var tools = Tags.div("hw-acts");
        if (task.end().isPresent()) {
            tools.add(Tags.bare("hw-word", telling.say("task.open-again"), pressed -> acts.takeBack(task)));
            return tools;
        }
        tools.add(
                Tags.bare("hw-word", telling.say("task.done"), pressed -> acts.done(task)),
                Tags.bare("hw-word", telling.say("task.not-needed"), pressed -> acts.notNeeded(task)));
        if (task.aside().filter(away -> away.until().isAfter(telling.today())).isEmpty()) {
            tools.add(Tags.bare("hw-word", telling.say("task.aside"), pressed -> acts.setAside(task)));
        } else {
            tools.add(Tags.bare("hw-word", telling.say("task.bring-back"), pressed -> acts.takeBack(task)));
        }
        tools.add(Tags.bare("hw-word", telling.say("task.change"), pressed -> acts.change(task)));
        return tools;
    }
}
