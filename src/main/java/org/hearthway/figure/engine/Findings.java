package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks at the settled positions of a picture: contacts kept, joints within their range, nothing under the floor. */
final class Findings {

    /** Of the body's height: a hundredth, which nobody sees at the size of a hand. */
    private static final double GAP = .01;

    private static final double UNDER = .012;
    private static final double SLACK = .05;

    private final FigureSheet sheet;
    private final Motion motion;
    private final List<String> all = new ArrayList<>();

    Findings(FigureSheet sheet, Motion motion) {
        this.sheet = sheet;
        this.motion = motion;
    }

    List<String> all() {
        if (motion.worst() >= GAP) {
            all.add(String.format(Locale.ROOT, "a contact is off by %.1f %% of the height", motion.worst() * 100));
        }
        for (int stop = 0; stop < motion.stops(); stop++) {
            var pose = motion.at((double) stop / Math.max(1, motion.stops() - 1));
            joints(pose);
            floor(new Body(pose, motion.size()));
            sheet.helper().ifPresent(helper -> helper(helper, new Body(pose, motion.size())));
        }
        return all;
    }

    private void joints(Pose pose) {
        for (int i = 0; i < Pose.SIZE; i++) {
            if (!Pose.isPlace(i) && (pose.get(i) < Pose.min(i) - SLACK || pose.get(i) > Pose.max(i) + SLACK)) {
                all.add(String.format(
                        Locale.ROOT,
                        "%s settles at %.1f degrees, beyond %.0f to %.0f",
                        Pose.name(i),
                        pose.get(i),
                        Pose.min(i),
                        Pose.max(i)));
            }
        }
    }

    private void floor(Body body) {
        for (var side : Side.values()) {
            for (var part : List.of(Part.FOOT, Part.TOES, Part.FINGERS, Part.KNEE, Part.ELBOW)) {
                for (var lump : part.lumps(body, side)) {
                    under(side.letter + " " + part.name().toLowerCase(Locale.ROOT), lump);
                }
            }
        }
        under("head", new Flesh(body).skull());
        Part.BACK.lumps(body, Side.RIGHT).forEach(lump -> under("back", lump));
    }

    private void under(String what, Lump lump) {
        if (lump.lowest() < -UNDER) {
            all.add(String.format(
                    Locale.ROOT, "%s lies %.1f %% of the height under the floor", what, -lump.lowest() * 100));
        }
    }

    private void helper(HelperSheet helper, Body child) {
        double off = helper.settling(motion.room(), child).worst(helper.pose(motion.room(), child));
        if (off >= GAP * HelperSheet.SCALE) {
            all.add(String.format(Locale.ROOT, "the helper reaches short by %.1f %% of the height", off * 100));
        }
    }
}
