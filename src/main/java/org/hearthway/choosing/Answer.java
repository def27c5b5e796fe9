package org.hearthway.choosing;

import java.time.Instant;
import java.util.Set;
import org.hearthway.base.AccountId;

/**
 * What was entered for a fact, by whom and when it last became this.
 *
 * @param data what was entered
 * @param by who entered it
 * @param at when
 */
public record Answer(Data data, AccountId by, Instant at) {

    /**
     * What a person enters for a fact.
     *
     * @param choices identifiers of the choices that hold; empty while the fact is not known
     * @param note where it comes from, or what is still asked; at most {@value Choosing#NOTE_MAX} characters
     */
    public record Data(Set<String> choices, String note) {

        /** Nothing known and nothing noted. */
        public static final Data NONE = new Data(Set.of(), "");

        public Data {
            choices = Set.copyOf(choices);
        }

        /** Whether nothing was entered. */
        public boolean isEmpty() {
            return choices.isEmpty() && note.isBlank();
        }
    }
}
