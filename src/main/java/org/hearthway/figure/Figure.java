package org.hearthway.figure;

import org.hearthway.base.Language;

/** The pictures of one exercise. Drawn for the right side, and mirrored for the left where a side matters. */
public interface Figure {

    /** Which picture. */
    enum Shown {
        START,
        END,
        MOVING,
        PAPER
    }

    /** The name by which exercises know it. */
    String id();

    /**
     * Address of a picture for {@code img} and {@code fetch}, relative to the program's root. It holds a digest of what
     * is drawn, so that a browser may keep it for good.
     *
     * @param left the exercise is done with the left side
     * @param tone of the drawn skin, 1 light to 4 dark; 0 as its author chose
     * @param language of the words inside, which those hear who do not see it
     */
    String address(Shown shown, boolean left, int tone, Language language);

    /** Width over height of start, end and moving picture alike. */
    double ratio();

    /** What is to be seen, in words. */
    String words(Language language, boolean left);
}
