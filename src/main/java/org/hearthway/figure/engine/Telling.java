package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.figure.engine.Told.Change;
import org.hearthway.figure.engine.Told.Movement;
import org.hearthway.figure.engine.Told.Who;

/** Finds what of a picture is worth a word: where the body is, and what changes most from start to end. */
public final class Telling {

    private static final int MOST = 3;

    /** Changes of both sides that differ by less are told as one. */
    private static final double ALIKE = 12;

    private static final Map<Movement, Joint> LIMBS = Map.ofEntries(
            Map.entry(Movement.HIP, Joint.HIP),
            Map.entry(Movement.HIP_ABD, Joint.HIP_ABD),
            Map.entry(Movement.HIP_ROT, Joint.HIP_ROT),
            Map.entry(Movement.KNEE, Joint.KNEE),
            Map.entry(Movement.ANKLE, Joint.ANKLE),
            Map.entry(Movement.SHOULDER, Joint.SHOULDER),
            Map.entry(Movement.SHOULDER_ABD, Joint.SHOULDER_ABD),
            Map.entry(Movement.ELBOW, Joint.ELBOW),
            Map.entry(Movement.WRIST, Joint.WRIST),
            Map.entry(Movement.PALM, Joint.PRON),
            Map.entry(Movement.FINGERS, Joint.FINGERS));

    private record Sized(Change change, double size) {}

    private final List<Sized> found = new ArrayList<>();
    private final boolean mirrored;

    private Telling(boolean mirrored) {
        this.mirrored = mirrored;
    }

    /** What the picture shows; mirrored, left and right change places. */
    public static Told of(Picture picture, boolean mirrored) {
        var sheet = picture.scenery().sheet();
        var telling = new Telling(mirrored);
        var from = picture.motion().at(0);
        var to = picture.motion().at(1);
        var posture = sheet.stances().get(0).posture().orElse(Posture.STANDING);
        var last = sheet.stances().stream()
                .flatMap(s -> s.posture().stream())
                .reduce((a, b) -> b)
                .orElse(posture);
        telling.trunk(from, to, posture);
        LIMBS.keySet().stream().sorted().forEach(movement -> telling.limb(movement, from, to));
        if (telling.found.isEmpty()) {
            telling.place(from, to, posture);
        }
        var changes = telling.found.stream()
                .sorted(Comparator.<Sized>comparingDouble(one -> -one.size))
                .limit(MOST)
                .map(Sized::change)
                .toList();
        return new Told(
                telling.seen(posture),
                sheet.supports().stream().map(Support::kind).toList(),
                last == posture ? Optional.empty() : Optional.of(telling.seen(last)),
                changes,
                sheet.helper().isPresent());
    }

    private Posture seen(Posture posture) {
        if (!mirrored) {
            return posture;
        }
        return switch (posture) {
            case SIDE_LYING_L -> Posture.SIDE_LYING_R;
            case SIDE_LYING_R -> Posture.SIDE_LYING_L;
            default -> posture;
        };
    }

    private void trunk(Pose from, Pose to, Posture posture) {
        double tilt = to.get(Axis.TILT) - from.get(Axis.TILT);
        double bend = to.get(Axis.TRUNK) - from.get(Axis.TRUNK);
        if (posture == Posture.SUPINE) {
            note(Movement.HIPS, Math.max(0, -tilt), Who.WHOLE);
            note(Movement.CURL, bend + Math.max(0, tilt), Who.WHOLE);
        } else {
            note(Movement.TRUNK, tilt + bend, Who.WHOLE);
        }
        note(Movement.NECK, to.get(Axis.NECK) - from.get(Axis.NECK), Who.WHOLE);
        note(Movement.BREATH, to.get(Axis.BREATH) - from.get(Axis.BREATH), Who.WHOLE);
        int m = mirrored ? -1 : 1;
        note(Movement.SIDE, m * (to.get(Axis.TRUNK_SIDE) - from.get(Axis.TRUNK_SIDE)), Who.WHOLE);
        note(Movement.TWIST, m * (to.get(Axis.TRUNK_TURN) - from.get(Axis.TRUNK_TURN)), Who.WHOLE);
        note(Movement.NECK_SIDE, m * (to.get(Axis.NECK_SIDE) - from.get(Axis.NECK_SIDE)), Who.WHOLE);
        note(Movement.NECK_TURN, m * (to.get(Axis.NECK_TURN) - from.get(Axis.NECK_TURN)), Who.WHOLE);
        double roll = to.get(Axis.TURN) - from.get(Axis.TURN);
        if (Math.abs(roll) > Movement.ROLL.from) {
            var movement = posture.frame().u().y() < .5 ? Movement.ROLL : Movement.PIVOT;
            found.add(new Sized(new Change(movement, m * roll > 0, Who.WHOLE), Double.MAX_VALUE));
        }
    }

    /** Where whoever is upright goes as a whole, told when no part of the body moves enough for a word. */
    private void place(Pose from, Pose to, Posture posture) {
        var frame = posture.frame();
        if (frame.u().y() < .5) {
            return;
        }
        double x = to.get(Axis.X) - from.get(Axis.X);
        double z = to.get(Axis.Z) - from.get(Axis.Z);
        note(
                Movement.SHIFT,
                (mirrored ? -1 : 1) * (x * frame.r().x() + z * frame.r().z()),
                Who.WHOLE);
        note(Movement.AHEAD, x * frame.f().x() + z * frame.f().z(), Who.WHOLE);
    }

    private void note(Movement movement, double degrees, Who who) {
        if (Math.abs(degrees) > movement.from) {
            found.add(new Sized(new Change(movement, degrees > 0, who), Math.abs(degrees) / movement.from));
        }
    }

    private void limb(Movement movement, Pose from, Pose to) {
        var joint = Optional.ofNullable(LIMBS.get(movement)).orElseThrow();
        double right = to.get(Side.RIGHT, joint) - from.get(Side.RIGHT, joint);
        double left = to.get(Side.LEFT, joint) - from.get(Side.LEFT, joint);
        if (Math.abs(right - left) < ALIKE && Math.min(Math.abs(right), Math.abs(left)) > movement.from) {
            note(movement, (right + left) / 2, Who.BOTH);
        } else {
            note(movement, right, mirrored ? Who.LEFT : Who.RIGHT);
            note(movement, left, mirrored ? Who.RIGHT : Who.LEFT);
        }
    }
}
