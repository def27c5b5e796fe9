package org.hearthway.medicine.engine;

import java.util.Locale;

/**
 * Whether two people copied the same words from one prescription. Capitals, spaces, and commas or points that stand
 * before a space or at the end make no difference; a point or comma between digits does, as every letter and digit.
 */
public final class AsWritten {

    private AsWritten() {}

    /** Whether both say the same. */
    public static boolean same(String first, String second) {
        return plain(first).equals(plain(second));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[,;.](?=\\s|$)", " ")
                .replaceAll("[\\s\\u00a0]+", " ")
                // "5mg" and "5 mg" are one, "1.5" and "15" are not
                .replaceAll("(?<=\\d) (?=\\p{L})", "")
                .strip();
    }
}
