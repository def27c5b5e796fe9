package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.Optional;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;

/** The stones of the long way, upright in one column: those ahead grow smaller with distance. */
final class PathStones {

    private PathStones() {}

    /** The folded stones behind us, level, with a line through them. */
    static Component behind(int count) {
        var picture = new SvgText("hw-behind-stones", 0, 0, 24 * count, 24).decorative();
        if (count > 1) {
            picture.shape("path", "class", "st-behind", "d", "M11 12H" + (24 * count - 13));
        }
        for (int i = 0; i < count; i++) {
            picture.shape("path", "class", "st-done", "d", Stone.outline(11 + 24 * i, 12, 9, 6.7, i + 70));
        }
        return new Drawing(picture);
    }

    /** The lit stone. */
    static Component now() {
        var outline = Stone.outline(30, 23, 25, 18.5, 80);
        return stone(new SvgText("", 0, 0, 60, 46)
                .decorative()
                .shape("ellipse", "class", "st-glow breathe", "cx", "30", "cy", "23", "rx", "40", "ry", "32")
                .shape("path", "class", "st-now", "d", outline)
                .shape("path", "class", "st-now-edge", "d", outline));
    }

    /** A stone that was reached and not left: its lower half is filled. */
    static Component besides() {
        var outline = Stone.outline(30, 23, 21.5, 16, 90);
        return stone(new SvgText("", 0, 0, 60, 46)
                .decorative()
                .shape("path", "class", "st-later", "d", outline)
                .shape("path", "class", "st-done", "d", "M11 25Q30 21 49 25Q45 38 30 38Q15 38 11 25Z"));
    }

    /**
     * A stone ahead, {@code distance} stones from the next.
     *
     * @param day of the month, which a stone carries once its day stands; the words beside it say it too
     */
    static Component later(int distance, Optional<String> day) {
        var size = Math.max(12, 21.5 - 1.6 * distance);
        var picture = new SvgText("", 0, 0, 60, 46)
                .decorative()
                .shape("path", "class", "st-later", "d", Stone.outline(30, 23, size, size * 0.74, 81 + distance));
        day.ifPresent(number -> picture.text(30, 28, "st-text", "middle", number));
        return stone(picture);
    }

    private static Component stone(SvgText picture) {
        return Tags.span("stone", new Drawing(picture));
    }
}
