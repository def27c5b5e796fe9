package org.hearthway.choosing;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.choosing.engine.Mark;

/**
 * What a family takes home from the talk, in family words and in the clinic's own where it has written some.
 *
 * @param paths always in the same order
 */
public record Handout(List<Section> paths) {

    public Handout {
        paths = List.copyOf(paths);
    }

    /**
     * One path.
     *
     * @param name what it is called
     * @param body what is said of it; empty while the clinic has not accepted its words
     */
    public record Section(Bilingual name, Optional<Body> body) {}

    /**
     * What is said of a path.
     *
     * @param what what it is
     * @param asks what it asks of the family
     * @param lines what speaks for it, against it, and is to be talked about for this child
     * @param missing what is not known yet of this child
     * @param unnamed whether something is not known yet that the clinic has no accepted words for
     * @param usual what change is usual, and for whom it is otherwise; empty when that cannot be said of this child
     * @param otherwise what is said in its place when it is known not to hold
     */
    public record Body(
            Bilingual what,
            Bilingual asks,
            List<Said> lines,
            List<Bilingual> missing,
            boolean unnamed,
            List<Bilingual> usual,
            Optional<Bilingual> otherwise) {

        public Body {
            lines = List.copyOf(lines);
            missing = List.copyOf(missing);
            usual = List.copyOf(usual);
        }
    }

    /** One line; never {@link Mark#MISSING}. */
    public record Said(Mark mark, Bilingual says) {}
}
