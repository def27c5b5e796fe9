package org.hearthway.demo;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Decision;

/** Facts laid on the table for the child of a story, and what was decided. */
record Meeting(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story story) {

    private static final LocalTime LAID = LocalTime.of(11, 20);
    private static final LocalTime DECIDED = LocalTime.of(12, 5);

    void addTo(Acts acts) {
        story.facts().forEach(laid -> acts.at(days.atWork(laid.day(), LAID), () -> lay(laid)));
        story.decided().forEach(chosen -> acts.at(days.atWork(chosen.day(), DECIDED), () -> decide(chosen)));
    }

    private void lay(Story.Laid laid) {
        var by = person.apply(laid.by());
        var facts = new HashMap<String, Answer.Data>();
        laid.choices()
                .forEach((fact, choices) -> facts.put(
                        fact, new Answer.Data(Set.copyOf(choices), laid.notes().getOrDefault(fact, ""))));
        laid.notes().forEach((fact, note) -> facts.putIfAbsent(fact, new Answer.Data(Set.of(), note)));
        services.choosing()
                .enter(
                        by,
                        child.get(),
                        facts,
                        services.choosing().talk(by, child.get()).version());
    }

    private void decide(Story.Chosen chosen) {
        var by = person.apply(chosen.by());
        List<Decision> before = services.choosing().decisions(by, child.get());
        services.choosing()
                .decide(
                        by,
                        child.get(),
                        new Decision.Data(chosen.path(), days.open(chosen.day()), chosen.present(), chosen.reason()),
                        before.stream().mapToLong(Decision::number).max().orElse(0));
    }
}
