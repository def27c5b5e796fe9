package org.hearthway.figure.engine;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A grown-up who helps.
 *
 * @param x where the hips are wished along the page, in the child's heights
 * @param z the same, toward the viewer
 * @param values angles in degrees, by {@link Pose#index}
 * @param front arms that lie over the child
 */
public record HelperSheet(
        Posture posture,
        Facing facing,
        double x,
        double z,
        Map<Integer, Double> values,
        List<Contact> contacts,
        Set<Side> front) {

    /** How much taller a grown-up is than the child. */
    static final double SCALE = 1.42;

    public HelperSheet {
        values = Map.copyOf(values);
        contacts = List.copyOf(contacts);
        front = Set.copyOf(front);
    }

    /** Which way the helper looks. */
    public enum Facing {
        LEFT,
        RIGHT,
        VIEWER;

        Frame frame() {
            return switch (this) {
                case LEFT -> new Frame(new Vec(-1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, -1));
                case RIGHT -> Frame.UPRIGHT;
                case VIEWER -> new Frame(new Vec(0, 0, 1), new Vec(0, 1, 0), new Vec(-1, 0, 0));
            };
        }
    }

    Settling settling(Room room, Body child) {
        return new Settling(Proportions.at(20), room, SCALE, contacts)
                .helping(child, new Vec(x / SCALE, posture.height, z / SCALE));
    }

    Pose pose(Room room, Body child) {
        var wish = Pose.of(posture)
                .in(facing.frame())
                .with(Pose.index(Axis.X), x / SCALE)
                .with(Pose.index(Axis.Z), z / SCALE);
        for (var value : values.entrySet()) {
            wish = wish.with(value.getKey(), value.getValue());
        }
        return settling(room, child).settle(wish);
    }
}
