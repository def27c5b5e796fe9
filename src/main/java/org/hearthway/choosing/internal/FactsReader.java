package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Fact.Choice;
import org.hearthway.choosing.Fact.Group;
import org.hearthway.choosing.Fact.Origin;
import org.hearthway.content.Entry;

/** Reads the facts that are asked for, in their groups. */
final class FactsReader {

    private static final List<String> LEVELS = List.of("1", "2", "3", "4", "5");

    private final Set<String> ids = new HashSet<>();
    private int levels;

    /** The groups of the file. */
    List<Group> read(Entry file) {
        var groups = new ArrayList<Group>();
        for (var block : file.list("groups")) {
            var id = block.text("id");
            var name = block.bilingual("name");
            groups.add(new Group(
                    id, name, block.list("facts").stream().map(this::fact).toList()));
            block.done();
        }
        if (ids.isEmpty()) {
            file.wrong("groups", "there is no fact", "at least one group with facts");
        }
        if (levels != 1) {
            file.wrong("groups", "no fact or several come from the child's level", "one with origin: level");
        }
        return List.copyOf(groups);
    }

    private Fact fact(Entry block) {
        var origin = block.maybeChoice("origin", Origin.class).orElse(Origin.ASKED);
        var fact = new Fact(
                block.text("id"),
                origin,
                block.yes("many"),
                block.bilingual("name"),
                block.bilingual("family"),
                choices(block));
        block.done();
        if (!ids.add(fact.id())) {
            block.wrong("id", "a fact \"" + fact.id() + "\" stands already", "an identifier of its own");
        }
        if (origin == Origin.LEVEL) {
            levels++;
            if (!fact.choices().stream().map(Choice::id).toList().equals(LEVELS)) {
                block.wrong("choices", "a level has other choices", "1 to 5");
            }
        }
        return fact;
    }

    private static List<Choice> choices(Entry block) {
        var seen = new HashSet<String>();
        var choices = new ArrayList<Choice>();
        for (var each : block.list("choices")) {
            var choice = new Choice(each.text("id"), each.bilingual("name"));
            each.done();
            if (!seen.add(choice.id())) {
                each.wrong("id", "a choice \"" + choice.id() + "\" stands already", "an identifier of its own");
            }
            choices.add(choice);
        }
        if (choices.size() < 2) {
            block.wrong("choices", "there are less than two choices", "two or more");
        }
        return choices;
    }
}
