package org.hearthway.choosing.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hearthway.base.Bilingual;

/**
 * One question about a child that matters for a path, with what each answer means.
 *
 * @param id identifier within the path
 * @param cases at least one; several may hold at once
 * @param source of what it says, or "common practice, no source"
 */
public record Criterion(String id, List<Case> cases, String source) {

    public Criterion {
        cases = List.copyOf(cases);
    }

    /**
     * An answer and its meaning.
     *
     * @param means never {@link Mark#MISSING}
     * @param says in trade words
     * @param family the same in family words, where the family's page says it
     */
    public record Case(Condition when, Mark means, Bilingual says, Optional<Bilingual> family) {

        public Case {
            if (means == Mark.MISSING) {
                throw new IllegalArgumentException("what a fact means is never that it is missing");
            }
        }
    }

    /**
     * What it says about a child: a line for each case that holds; then, when another could hold for all that is known,
     * a line that names the missing facts; nothing when every case is ruled out.
     */
    public List<Line> read(Known known) {
        var lines = new ArrayList<Line>();
        var missing = new TreeSet<String>();
        for (var each : cases) {
            if (each.when().in(known) == Truth.YES) {
                lines.add(new Line(id, each.means(), Optional.of(each), Set.of(), source));
            }
            missing.addAll(each.when().missing(known));
        }
        if (!missing.isEmpty()) {
            lines.add(new Line(id, Mark.MISSING, Optional.empty(), missing, source));
        }
        return List.copyOf(lines);
    }
}
