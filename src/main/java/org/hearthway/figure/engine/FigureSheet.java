package org.hearthway.figure.engine;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;

/**
 * A picture as its author wrote it.
 *
 * @param sided drawn for the right and mirrored for the left; else both sides do the same or nothing has a side
 * @param hold seconds the last position is held; 0 when it is not
 * @param years age of the drawn child
 * @param stances two positions or more, the first and the last being shown as start and end
 */
public record FigureSheet(
        String id,
        Bilingual title,
        Kind kind,
        View view,
        boolean sided,
        int hold,
        double years,
        Look look,
        List<Support> supports,
        List<Stance> stances,
        List<Thing> things,
        List<Arrow> arrows,
        Optional<Lens> lens,
        Optional<HelperSheet> helper) {

    public FigureSheet {
        supports = List.copyOf(supports);
        stances = List.copyOf(stances);
        things = List.copyOf(things);
        arrows = List.copyOf(arrows);
    }

    /** What sort of exercise it shows. */
    public enum Kind {
        STRETCH,
        STRENGTH,
        BALANCE,
        FUNCTION,
        POSTURE
    }

    /**
     * Something held or reached for.
     *
     * @param size radius of a ball or of a rolled towel, edge of a block, thickness of a pillow; ignored for a band
     * @param track points of the body it goes with; a band goes between two
     * @param offset from the point it goes with
     * @param places where it is from start to end, when it goes with nothing
     */
    public record Thing(Sort sort, double size, List<String> track, Vec offset, List<Vec> places, Depth depth) {

        public Thing {
            track = List.copyOf(track);
            places = List.copyOf(places);
        }

        /** What it is. */
        public enum Sort {
            BALL,
            BLOCK,
            BAND,
            PILLOW,
            TOWEL
        }

        /** Whether it lies behind the body, between the hands, or before all of it. */
        public enum Depth {
            BACK,
            HANDS,
            FRONT
        }
    }

    /**
     * An arrow along the way of a point of the body.
     *
     * @param pivot the arrow lies on the side away from this point
     * @param off how far beside the way, in body heights
     * @param flip lies on the side toward the pivot
     * @param shift where it lies beside the way, when no pivot is named: to the right and up, in body heights
     */
    public record Arrow(String of, Optional<String> pivot, double off, boolean flip, Optional<Vec> shift) {}

    /**
     * A round magnifier.
     *
     * @param right where its middle lies from the point, in body heights
     * @param up the same, upward
     */
    public record Lens(String of, double right, double up, double radius, double zoom) {}
}
