package org.hearthway.choosing.ui;

import org.hearthway.choosing.engine.Mark;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;

/** The stone of a mark: full, crossed, dotted, with three dots. The word always stands beside it. */
final class MarkPicture {

    private static final double WIDTH = 18;
    private static final double HEIGHT = 16;

    private MarkPicture() {}

    static Drawing of(Mark mark) {
        var picture = new SvgText("", 0, 0, WIDTH, HEIGHT).decorative();
        var outline = Stone.outline(9, 8, 7.6, 6.3, mark.name().length());
        switch (mark) {
            case FOR -> picture.shape("path", "class", "cg-for", "d", outline);
            case AGAINST -> {
                picture.shape("path", "class", "cg-ag", "d", outline);
                picture.shape("path", "class", "cg-agl", "d", "M6.6 5.8l4.8 4.4M11.4 5.8l-4.8 4.4");
            }
            case MISSING -> picture.shape("path", "class", "cg-mi", "d", outline);
            case TALK -> {
                picture.shape("path", "class", "cg-talk", "d", outline);
                picture.shape("path", "class", "cg-dots", "d", "M6 8h.1M9 8h.1M12 8h.1");
            }
        }
        return new Drawing(picture);
    }
}
