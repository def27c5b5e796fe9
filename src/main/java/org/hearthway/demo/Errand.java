package org.hearthway.demo;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;

/** One task of a story: given in the office, done in the evening or not yet. */
record Errand(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story.Asked story) {

    private static final LocalTime GIVEN = LocalTime.of(11, 45);
    private static final LocalTime DONE = LocalTime.of(18, 55);

    void addTo(Acts acts) {
        var given = new TaskId[1];
        acts.at(days.atWork(story.day(), GIVEN), () -> given[0] = give());
        if (story.done() < 0) {
            acts.at(days.moment(story.done(), DONE), () -> end(given[0]));
        }
    }

    private TaskId give() {
        var says = story.says();
        return services.tasks()
                .give(
                        person.apply(story.by()),
                        child.get(),
                        new Tasks.Asked(assignee(), says.en(), says.es(), days.on(story.due()), Optional.empty()));
    }

    private Assignee assignee() {
        if (story.to().equals("family")) {
            return new Assignee.Family();
        }
        return Assignee.ROLES.stream()
                .filter(role -> story.to().equals("any-" + role.name().toLowerCase(Locale.ROOT)))
                .findFirst()
                .<Assignee>map(Assignee.AnyOf::new)
                .orElseGet(() -> new Assignee.Person(person.apply(story.to()).account()));
    }

    private void end(TaskId task) {
        var by = person.apply(story.doneBy());
        if (by.isStaff()) {
            services.tasks().end(by, task, Task.Outcome.DONE, "", 1);
        } else {
            services.tasks().tick(by, task, 1);
        }
    }
}
