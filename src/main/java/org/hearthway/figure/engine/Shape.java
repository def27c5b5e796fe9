package org.hearthway.figure.engine;

import java.util.Optional;

/**
 * One stroke-and-fill of a drawing. The line lies under the fill, so only its outer half shows.
 *
 * @param key which part it is, the same in every pose
 * @param fill class of its fill, such as {@code f-skin}; empty for none
 * @param stroke class of its line, such as {@code s-ink}; empty for none
 * @param width width of the line
 * @param clip what it is cut to
 * @param body whether it is of the child's body, whose start is dotted behind its end
 */
record Shape(
        String key, Path path, String fill, String stroke, double width, Optional<Path> clip, int layer, boolean body) {

    /** Two halves of it show as one line of six thousandths of the height. */
    static final double LINE = 5.0;

    boolean isDrawnLike(Shape other) {
        return key.equals(other.key) && fill.equals(other.fill) && stroke.equals(other.stroke) && layer == other.layer;
    }
}
