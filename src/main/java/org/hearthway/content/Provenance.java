package org.hearthway.content;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Language;

/**
 * Where a piece of medical content comes from and who has read it.
 *
 * @param source the published source, or "common practice, no source"
 * @param version counted up with each change of the text
 * @param english who reviewed the English text and when; empty while nobody has
 * @param spanish who reviewed the Spanish text and when; empty while nobody has
 */
public record Provenance(String source, int version, Optional<Review> english, Optional<Review> spanish) {

    /** A named person's review of one language on one day. */
    public record Review(String by, LocalDate on) {}

    /** The review of a language, if there was one. */
    public Optional<Review> review(Language language) {
        return switch (language) {
            case EN -> english;
            case ES -> spanish;
        };
    }
}
