package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hearthway.parts.Tags;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.engine.MuscleWeek;
import org.hearthway.program.engine.MuscleWeek.Part;
import org.hearthway.program.engine.MuscleWeek.Sum;
import org.hearthway.program.engine.ProgramLine;

/** What the first week of what is written asks of each muscle group, beside what the version compared with asks. */
final class MuscleLoad extends Div {

    private static final int DAYS = 7;

    private final transient Say say;

    MuscleLoad(Say say) {
        this.say = say;
        addClassName("hw-muscles");
    }

    void follow(List<ProgramLine> before, List<ProgramLine> now, LocalDate effective) {
        removeAll();
        var names = new HashMap<String, String>();
        var was = sums(before, effective, names);
        var is = sums(now, effective, names);
        var groups = new ArrayList<>(names.keySet());
        groups.sort(Comparator.comparing((String group) -> -weight(is.getOrDefault(group, new Sum(0, 0))))
                .thenComparing(names::get));
        add(Tags.div("hw-colh", Tags.h2("", say.say("muscles"))));
        if (groups.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("muscles.none")));
            return;
        }
        var list = new UnorderedList();
        groups.forEach(group -> list.add(item(
                names.getOrDefault(group, group),
                was.getOrDefault(group, new Sum(0, 0)),
                is.getOrDefault(group, new Sum(0, 0)))));
        add(list);
    }

    /** Rounds first, then minutes. */
    private static int weight(Sum sum) {
        return sum.rounds() * 1000 + sum.minutes();
    }

    private ListItem item(String name, Sum was, Sum is) {
        var item = new ListItem(new Span(name), Tags.span("hw-b", words(is)));
        if (!was.equals(is)) {
            item.addClassName("new");
            item.add(Tags.span("hw-sub", say.say("muscles.was", words(was))));
        }
        return item;
    }

    private String words(Sum sum) {
        if (sum.rounds() > 0 && sum.minutes() > 0) {
            return say.say("muscles.both", sum.rounds(), sum.minutes());
        }
        return sum.minutes() > 0 ? say.say("muscles.minutes", sum.minutes()) : say.say("muscles.rounds", sum.rounds());
    }

    private Map<String, Sum> sums(List<ProgramLine> lines, LocalDate effective, Map<String, String> names) {
        var parts = new ArrayList<Part>();
        for (var line : lines) {
            var isOn = IntStream.range(0, DAYS).mapToObj(effective::plusDays).anyMatch(line::isOn);
            say.library().find(line.exercise()).filter(known -> isOn).ifPresent(exercise -> {
                var groups = exercise.traits().muscleGroups();
                groups.forEach(group -> names.put(group.id(), group.name().in(say.language())));
                parts.add(new Part(
                        groups.stream().map(Named::id).collect(Collectors.toSet()),
                        isHeld(exercise),
                        line.prescription(),
                        say.library().pace().minutes(line)));
            });
        }
        return MuscleWeek.of(parts);
    }

    private static boolean isHeld(Exercise exercise) {
        return exercise.kind() == Kind.STRETCH || exercise.kind() == Kind.POSITION;
    }
}
