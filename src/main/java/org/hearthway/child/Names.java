package org.hearthway.child;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a child is called.
 *
 * @param used the name the child goes by, 1 to 80 characters
 * @param given given name or names by law, at most 80 characters; empty when it is the used one
 * @param surname first or only surname, 1 to 120 characters
 * @param secondSurname second surname, at most 120 characters; empty when there is none
 */
public record Names(String used, String given, String surname, String secondSurname) {

    /** A child with one surname who goes by the name the law knows. */
    public static Names plain(String used, String surname) {
        return new Names(used, "", surname, "");
    }

    /** Without blanks around. */
    public Names stripped() {
        return new Names(used.strip(), given.strip(), surname.strip(), secondSurname.strip());
    }

    /** Used name and surnames. */
    public String full() {
        return joined(used, surname, secondSurname);
    }

    /** Given name by law and surnames. */
    public String legal() {
        return joined(given.isBlank() ? used : given, surname, secondSurname);
    }

    /** The surnames. */
    public String surnames() {
        return joined(surname, secondSurname);
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" "));
    }
}
