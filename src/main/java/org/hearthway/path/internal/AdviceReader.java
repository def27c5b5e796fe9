package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Advice;
import org.hearthway.path.engine.Advice.Ages;

/** Reads a path's advice: each entry about an age, about GMFCS levels, or about what only the team can judge. */
final class AdviceReader {

    private static final int OLDEST = 25;

    private final List<String> stages;

    /** Takes the path's stages, one of which is the day on which an age counts. */
    AdviceReader(List<String> stages) {
        this.stages = stages;
    }

    List<Advice> read(List<Entry> entries) {
        var all = new ArrayList<Advice>();
        var ids = new HashSet<String>();
        for (var entry : entries) {
            var id = entry.text("id");
            if (!ids.add(id)) {
                entry.wrong("id", "\"" + id + "\" stands twice", "each advice once");
            }
            var ages = entry.maybeBlock("ages").map(this::ages);
            var levels = levels(entry);
            if (ages.isPresent() && !levels.isEmpty()) {
                entry.wrong("levels", "the advice has both \"ages\" and \"levels\"", "one of them or neither");
                levels = new TreeSet<>();
            }
            all.add(new Advice(id, ages, levels, entry.bilingual("says"), entry.text("source")));
            entry.done();
        }
        return all;
    }

    private Ages ages(Entry entry) {
        var from = entry.integer("from", 0, OLDEST);
        var to = entry.maybeInteger("to", 0, OLDEST);
        if (to.filter(last -> last < from).isPresent()) {
            entry.wrong("to", "\"to\" is " + to.get(), "\"from\" or older");
            to = Optional.empty();
        }
        var stage = entry.text("on");
        if (!stages.contains(stage)) {
            entry.wrong("on", "\"on\" is " + stage, "a stage of this path");
        }
        entry.done();
        return new Ages(from, to, stage);
    }

    private static SortedSet<Integer> levels(Entry entry) {
        var levels = new TreeSet<Integer>();
        for (var text : entry.texts("levels")) {
            if (text.length() == 1 && "12345".contains(text)) {
                levels.add(Integer.valueOf(text));
            } else {
                entry.wrong("levels", "\"levels\" has " + text, "GMFCS levels, 1 to 5");
            }
        }
        return levels;
    }
}
