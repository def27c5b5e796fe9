package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something of the body touches something.
 *
 * @param side meaningless for parts without a side
 * @param target a surface for {@code ON} and {@code AT}; for {@code TO} an anchor of a support, a part of the body,
 *     {@code child R heel}, or {@code [x, y, z]}
 */
public record Contact(Part part, Side side, Kind kind, String target) {

    /** How it touches: from above, from the left of the page, or with its middle. */
    public enum Kind {
        ON,
        AT,
        TO
    }

    /**
     * Reads {@code [R|L|both] part on|at|to target}; both sides become two contacts.
     *
     * @throws IllegalArgumentException saying what of it is not known
     */
    public static List<Contact> parse(String text) {
        for (var kind : Kind.values()) {
            var word = " " + kind.name().toLowerCase(java.util.Locale.ROOT) + " ";
            int at = text.indexOf(word);
            if (at > 0) {
                var target = text.substring(at + word.length()).strip();
                return bodyPart(text.substring(0, at).strip()).stream()
                        .map(who -> new Contact(who.part(), who.side(), kind, target))
                        .toList();
            }
        }
        throw new IllegalArgumentException("\"" + text + "\" says neither on, at nor to");
    }

    /** A part of the body on one side. */
    record Place(Part part, Side side) {}

    static List<Place> bodyPart(String text) {
        var first = text.split(" ")[0];
        var side = side(first);
        var word = side.isPresent() || first.equals("both")
                ? text.substring(first.length()).strip()
                : text;
        var part = Part.of(word)
                .orElseThrow(() -> new IllegalArgumentException("\"" + word + "\" is no part of the body"));
        var found = new ArrayList<Place>();
        if (side.isPresent() || !part.isSided()) {
            found.add(new Place(part, side.orElse(Side.RIGHT)));
        } else {
            found.add(new Place(part, Side.RIGHT));
            found.add(new Place(part, Side.LEFT));
        }
        return found;
    }

    private static Optional<Side> side(String word) {
        return switch (word) {
            case "R" -> Optional.of(Side.RIGHT);
            case "L" -> Optional.of(Side.LEFT);
            default -> Optional.empty();
        };
    }
}
