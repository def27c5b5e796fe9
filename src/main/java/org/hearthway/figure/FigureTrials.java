package org.hearthway.figure;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Viewer;
import org.hearthway.content.TriedFile;
import org.hearthway.figure.engine.Norms;
import org.hearthway.figure.engine.Side;

/** Tries out files of pictures, for those who write them. Nothing is kept. */
public interface FigureTrials {

    /** Characters of a file that is tried. */
    int LONGEST = 20_000;

    /**
     * What a file makes.
     *
     * @param mistakes for which the program would not start with this file, by line
     * @param beyond angles beyond the norm for the child's age, which may be meant
     * @param sides the picture for the right and, where a side matters, for the left; empty when it cannot be drawn
     */
    record Trial(List<TriedFile.Mistake> mistakes, List<Norms.Beyond> beyond, List<Drawn> sides) {

        public Trial {
            mistakes = List.copyOf(mistakes);
            beyond = List.copyOf(beyond);
            sides = List.copyOf(sides);
        }
    }

    /**
     * The pictures of one side, as SVG.
     *
     * @param side which side it is for; empty where no side matters
     * @param ratio width over height
     * @param words what those hear who do not see it
     */
    record Drawn(Optional<Side> side, String start, String end, String moving, double ratio, Bilingual words) {}

    /** The pictures that there are, in alphabetical order. */
    List<String> names(Viewer viewer);

    /** The text of a picture's file; empty when there is none of the name. */
    Optional<String> text(Viewer viewer, String name);

    /**
     * Reads a text as the start would, and draws it.
     *
     * @param text at most {@link #LONGEST} characters
     */
    Trial of(Viewer viewer, String text);
}
