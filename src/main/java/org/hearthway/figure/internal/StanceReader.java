package org.hearthway.figure.internal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.hearthway.content.Entry;
import org.hearthway.figure.engine.Axis;
import org.hearthway.figure.engine.Contact;
import org.hearthway.figure.engine.Joint;
import org.hearthway.figure.engine.Pose;
import org.hearthway.figure.engine.Posture;
import org.hearthway.figure.engine.Room;
import org.hearthway.figure.engine.Side;
import org.hearthway.figure.engine.Stance;

/** Reads one position: angles within what can be drawn, contacts with what is there. */
final class StanceReader {

    private static final List<Axis> TRUNK =
            List.of(Axis.TRUNK, Axis.TRUNK_SIDE, Axis.TRUNK_TURN, Axis.NECK, Axis.NECK_SIDE, Axis.NECK_TURN);
    private static final Map<String, Axis> ROOT = Map.of("tilt", Axis.TILT, "turn", Axis.TURN, "lean", Axis.LEAN);

    private final Room room;

    StanceReader(Room room) {
        this.room = room;
    }

    Stance read(Entry entry) {
        var values = values(entry);
        entry.maybeBlock("root").ifPresent(root -> {
            ROOT.forEach((key, axis) -> number(root, key, axis.min(), axis.max(), "degrees")
                    .ifPresent(value -> values.put(Pose.index(axis), value)));
            root.done();
        });
        number(entry, Axis.BREATH.key(), Axis.BREATH.min(), Axis.BREATH.max(), "of a deep breath")
                .ifPresent(value -> values.put(Pose.index(Axis.BREATH), value));
        number(entry, "at", Axis.X.min(), Axis.X.max(), "body heights")
                .ifPresent(value -> values.put(Pose.index(Axis.X), value));
        var stance = new Stance(
                entry.maybeChoice("posture", Posture.class),
                values,
                entry.has("contact") ? Optional.of(contacts(entry)) : Optional.empty(),
                movements(entry, "free"),
                movements(entry, "lock"),
                entry.has("plant") ? Optional.of(sides(entry, "plant")) : Optional.empty(),
                sides(entry, "balance"),
                stay(entry));
        entry.done();
        return stance;
    }

    /** Angles of limbs and trunk by their index. */
    static Map<Integer, Double> values(Entry entry) {
        var values = new TreeMap<Integer, Double>();
        limbs(entry, "both", List.of(Side.RIGHT, Side.LEFT), values);
        limbs(entry, "R", List.of(Side.RIGHT), values);
        limbs(entry, "L", List.of(Side.LEFT), values);
        for (var axis : TRUNK) {
            number(entry, axis.key(), axis.min(), axis.max(), "degrees")
                    .ifPresent(value -> values.put(Pose.index(axis), value));
        }
        return values;
    }

    private static void limbs(Entry entry, String key, List<Side> sides, Map<Integer, Double> values) {
        entry.maybeBlock(key).ifPresent(limb -> {
            for (var joint : Joint.values()) {
                number(limb, joint.key(), joint.min(), joint.max(), "degrees")
                        .ifPresent(value -> sides.forEach(side -> values.put(Pose.index(side, joint), value)));
            }
            limb.done();
        });
    }

    private static Optional<Double> number(Entry entry, String key, double min, double max, String unit) {
        return entry.maybeNumber(key, min, max, unit);
    }

    List<Contact> contacts(Entry entry) {
        var found = new ArrayList<Contact>();
        for (var text : entry.texts("contact")) {
            for (var contact : parsed(entry, "contact", text, Contact::parse).orElse(List.of())) {
                room.missing(contact)
                        .ifPresent(target -> entry.wrong(
                                "contact",
                                "\"" + target + "\" is not in this picture",
                                "one of its supports or a part"));
                found.add(contact);
            }
        }
        return found;
    }

    private static <T> Optional<T> parsed(Entry entry, String key, String text, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(text));
        } catch (IllegalArgumentException wrong) {
            entry.wrong(key, String.valueOf(wrong.getMessage()), "such as \"R hand on table\"");
            return Optional.empty();
        }
    }

    private static Set<Integer> movements(Entry entry, String key) {
        var found = new LinkedHashSet<Integer>();
        for (var text : entry.texts(key)) {
            var index = movement(text);
            if (index.isPresent()) {
                found.add(index.getAsInt());
            } else {
                entry.wrong(key, "\"" + text + "\" is no joint", "such as neck, root tilt or R knee");
            }
        }
        return found;
    }

    private static OptionalInt movement(String text) {
        var axis = Axis.of(text);
        if (axis.isPresent()) {
            return OptionalInt.of(Pose.index(axis.get()));
        }
        var words = text.split(" ");
        if (words.length == 2 && (words[0].equals("R") || words[0].equals("L"))) {
            var side = words[0].equals("R") ? Side.RIGHT : Side.LEFT;
            return Joint.of(words[1])
                    .map(joint -> OptionalInt.of(Pose.index(side, joint)))
                    .orElse(OptionalInt.empty());
        }
        return OptionalInt.empty();
    }

    static Set<Side> sides(Entry entry, String key) {
        var sides = EnumSet.noneOf(Side.class);
        for (var text : entry.texts(key)) {
            switch (text) {
                case "R" -> sides.add(Side.RIGHT);
                case "L" -> sides.add(Side.LEFT);
                default -> entry.wrong(key, "\"" + text + "\" is no side", "R or L");
            }
        }
        return sides;
    }

    private static List<String> stay(Entry entry) {
        var parts = entry.texts("stay");
        parts.forEach(part -> parsed(entry, "stay", part + " on floor", Contact::parse));
        return parts;
    }
}
