package org.hearthway.child;

import java.util.List;

/**
 * What is known of a child's allergies. "None" is said only when somebody asked.
 *
 * @param asked whether anybody asked
 * @param known each with its reaction, 1 to 200 characters; empty together with {@code asked} means none
 */
public record Allergies(boolean asked, List<String> known) {

    public static final Allergies NOT_ASKED = new Allergies(false, List.of());

    public Allergies {
        known = List.copyOf(known);
    }
}
