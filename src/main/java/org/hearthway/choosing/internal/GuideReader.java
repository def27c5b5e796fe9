package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Fact.Origin;
import org.hearthway.choosing.engine.Criterion;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.content.Entry;

/** Reads what the clinic knows of choosing a path. */
final class GuideReader {

    private static final int MOST_PATHS = 20;

    /** How a case may be meant in a file: never that a fact is missing. */
    private enum Means {
        FOR(Mark.FOR),
        AGAINST(Mark.AGAINST),
        TALK(Mark.TALK);

        private final Mark mark;

        Means(Mark mark) {
            this.mark = mark;
        }
    }

    private record Read(Entry block, Criterion.Case made) {}

    private final ConditionReader conditions = new ConditionReader();
    private final List<Read> read = new ArrayList<>();

    /** The guide of a file. */
    Guide read(Entry file) {
        var criteria = new ArrayList<Criterion>();
        var ids = new HashSet<String>();
        for (var block : file.list("criteria")) {
            var criterion = criterion(block);
            if (!ids.add(criterion.id())) {
                block.wrong("id", "a criterion \"" + criterion.id() + "\" stands already", "an identifier of its own");
            }
            criteria.add(criterion);
        }
        if (criteria.isEmpty()) {
            file.wrong("criteria", "\"criteria\" is missing or empty", "at least one criterion");
        }
        return new Guide(
                file.id(),
                file.integer("place", 1, MOST_PATHS),
                file.bilingual("name"),
                criteria,
                file.list("points").stream().map(GuideReader::point).toList(),
                change(file.block("change")),
                family(file.block("family")));
    }

    private Criterion criterion(Entry block) {
        var cases = block.list("cases").stream().map(this::each).toList();
        if (cases.isEmpty()) {
            block.wrong("cases", "\"cases\" is missing or empty", "at least one case");
        }
        var criterion = new Criterion(block.text("id"), cases, block.text("source"));
        block.done();
        return criterion;
    }

    private Criterion.Case each(Entry block) {
        var made = new Criterion.Case(
                conditions.at(block, "when"),
                block.choice("means", Means.class).mark,
                block.bilingual("says"),
                block.maybeBilingual("family"));
        block.done();
        read.add(new Read(block, made));
        return made;
    }

    private static Guide.Point point(Entry block) {
        var point = new Guide.Point(block.bilingual("says"), block.text("source"));
        block.done();
        return point;
    }

    private Guide.Change change(Entry block) {
        var change = new Guide.Change(
                conditions.at(block, "shown"),
                told(block.block("usual")),
                told(block.block("beside")),
                told(block.block("otherwise")),
                block.text("source"));
        block.done();
        return change;
    }

    private static Guide.Told told(Entry block) {
        var told = new Guide.Told(block.bilingual("says"), block.bilingual("family"));
        block.done();
        return told;
    }

    private static Guide.ForFamily family(Entry block) {
        var family = new Guide.ForFamily(block.bilingual("name"), block.bilingual("what"), block.bilingual("asks"));
        block.done();
        return family;
    }

    /** Looks across facts and guides: do facts and choices exist, and do age and level advise only. */
    void check(Map<String, Fact> facts) {
        conditions.check(facts);
        for (var each : read) {
            if (each.made().means() == Mark.AGAINST && readsAgeOrLevel(each.made(), facts)) {
                each.block().wrong("means", "age or level speaks against a path", "talk: age and level advise only");
            }
        }
    }

    private static boolean readsAgeOrLevel(Criterion.Case made, Map<String, Fact> facts) {
        return made.when().readsAge()
                || made.when().facts().stream()
                        .map(facts::get)
                        .anyMatch(fact -> fact != null && fact.origin() == Origin.LEVEL);
    }
}
