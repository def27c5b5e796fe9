package org.hearthway.figure.engine;

import java.util.Arrays;
import java.util.List;

/** All angles of the body in degrees and where it stands, in body heights. Immutable. */
public final class Pose {

    private static final List<Axis> TRUNK = List.of(Axis.values());
    private static final List<Joint> JOINTS = List.of(Joint.values());
    private static final List<Side> SIDES = List.of(Side.values());
    private static final int AXES = TRUNK.size();
    private static final int LIMB = JOINTS.size();
    static final int SIZE = AXES + 2 * LIMB;

    private final Frame base;
    private final double[] values;

    private Pose(Frame base, double[] values) {
        this.base = base;
        this.values = values;
    }

    /** The posture with every joint at its neutral zero. */
    static Pose of(Posture posture) {
        var values = new double[SIZE];
        values[index(Axis.Y)] = posture.height;
        return new Pose(posture.frame(), values);
    }

    /** The place of a trunk movement among all movements. */
    public static int index(Axis axis) {
        return axis.place();
    }

    /** The place of a limb movement among all movements. */
    public static int index(Side side, Joint joint) {
        return AXES + side.place() * LIMB + joint.place();
    }

    static boolean isPlace(int index) {
        return index < AXES && TRUNK.get(index).isPlace();
    }

    static double min(int index) {
        return index < AXES
                ? TRUNK.get(index).min()
                : JOINTS.get((index - AXES) % LIMB).min();
    }

    static double max(int index) {
        return index < AXES
                ? TRUNK.get(index).max()
                : JOINTS.get((index - AXES) % LIMB).max();
    }

    /** How a message names the movement: "R knee". */
    static String name(int index) {
        if (index < AXES) {
            return TRUNK.get(index).key();
        }
        var side = SIDES.get((index - AXES) / LIMB);
        return side.letter + " " + JOINTS.get((index - AXES) % LIMB).key();
    }

    /** A limb's angle in degrees. */
    public double get(Side side, Joint joint) {
        return values[index(side, joint)];
    }

    /** A trunk angle in degrees, or a place in body heights. */
    public double get(Axis axis) {
        return values[index(axis)];
    }

    double get(int index) {
        return values[index];
    }

    Frame base() {
        return base;
    }

    Pose with(int index, double value) {
        var changed = values.clone();
        changed[index] = value;
        return new Pose(base, changed);
    }

    Pose in(Frame frame) {
        return new Pose(frame, values);
    }

    Pose between(Pose other, double part) {
        var mixed = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            mixed[i] = values[i] + (other.values[i] - values[i]) * part;
        }
        return new Pose(base.toward(other.base, part), mixed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pose pose && base.equals(pose.base) && Arrays.equals(values, pose.values);
    }

    @Override
    public int hashCode() {
        return 31 * base.hashCode() + Arrays.hashCode(values);
    }
}
