package org.hearthway.figure.engine;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What an author would write for the other side: right and left in each other's place. */
final class Swapped {

    private static final Set<Axis> SIDED =
            EnumSet.of(Axis.TRUNK_SIDE, Axis.TRUNK_TURN, Axis.NECK_SIDE, Axis.NECK_TURN, Axis.TURN, Axis.LEAN, Axis.Z);

    private Swapped() {}

    static Stance stance(Stance stance) {
        return new Stance(
                stance.posture(),
                values(stance.values()),
                stance.contacts().map(all -> all.stream().map(Swapped::contact).toList()),
                indices(stance.free()),
                indices(stance.lock()),
                stance.plant().map(Swapped::sides),
                sides(stance.balance()),
                stance.stay().stream().map(Swapped::words).toList());
    }

    private static Map<Integer, Double> values(Map<Integer, Double> values) {
        var swapped = new HashMap<Integer, Double>();
        values.forEach((index, value) -> swapped.put(index(index), isSided(index) ? -value : value));
        return swapped;
    }

    private static boolean isSided(int index) {
        return index < Axis.values().length && SIDED.contains(Axis.values()[index]);
    }

    private static int index(int index) {
        for (var joint : Joint.values()) {
            for (var side : Side.values()) {
                if (index == Pose.index(side, joint)) {
                    return Pose.index(side.other(), joint);
                }
            }
        }
        return index;
    }

    private static Set<Integer> indices(Set<Integer> indices) {
        var swapped = new HashSet<Integer>();
        indices.forEach(index -> swapped.add(index(index)));
        return swapped;
    }

    private static Set<Side> sides(Set<Side> sides) {
        var swapped = EnumSet.noneOf(Side.class);
        sides.forEach(side -> swapped.add(side.other()));
        return swapped;
    }

    private static Contact contact(Contact contact) {
        var side = contact.part().isSided() ? contact.side().other() : contact.side();
        return new Contact(contact.part(), side, contact.kind(), target(contact.target()));
    }

    private static String target(String target) {
        if (Grasp.isPoint(target)) {
            var at = Grasp.point(target);
            return "[" + at.x() + ", " + at.y() + ", " + -at.z() + "]";
        }
        if (target.matches("[a-z]+\\.[RL]")) {
            return target.substring(0, target.length() - 1) + (target.endsWith("R") ? "L" : "R");
        }
        return words(target);
    }

    private static String words(String text) {
        return text.startsWith("R ")
                ? "L " + text.substring(2)
                : text.startsWith("L ") ? "R " + text.substring(2) : text;
    }

    /** The point's name on the other side. */
    static String point(String name) {
        return name.startsWith("R") ? "L" + name.substring(1) : name.startsWith("L") ? "R" + name.substring(1) : name;
    }

    static Motion motion(FigureSheet sheet) {
        return new Motion(
                Proportions.at(sheet.years()),
                sheet.supports(),
                sheet.stances().stream().map(Swapped::stance).toList());
    }

    static Optional<Vec> point(Body body, String name) {
        return body.point(point(name)).map(at -> new Vec(at.x(), at.y(), -at.z()));
    }

    static final List<String> POINTS = List.of(
            "hip",
            "waist",
            "chest",
            "c7",
            "headC",
            "nose",
            "belly",
            "Rhip",
            "Rknee",
            "Rankle",
            "Rheel",
            "Rball",
            "Rtoe",
            "Rshoulder",
            "Relbow",
            "Rwrist",
            "Rknuck",
            "Rtip",
            "Lhip",
            "Lknee",
            "Lankle",
            "Lheel",
            "Lball",
            "Ltoe",
            "Lshoulder",
            "Lelbow",
            "Lwrist",
            "Lknuck",
            "Ltip");
}
