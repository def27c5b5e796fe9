package org.hearthway.path.engine;

import java.time.Period;

/** How much a value of a path is. */
public sealed interface Amount {

    /** The form in which it stands in a file: {@code P6W}, {@code 8}. */
    String text();

    /** A calendar gap. */
    record Gap(Period period) implements Amount {
        @Override
        public String text() {
            return period.toString();
        }
    }

    /** So often in all. */
    record Times(int number) implements Amount {
        @Override
        public String text() {
            return String.valueOf(number);
        }
    }

    /** The amount of a {@link #text()}. */
    static Amount parse(String text) {
        return text.startsWith("P") ? new Gap(Period.parse(text)) : new Times(Integer.parseInt(text));
    }
}
