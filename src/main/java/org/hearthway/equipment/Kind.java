package org.hearthway.equipment;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;

/**
 * A kind of thing, as data in {@code content/equipment}.
 *
 * @param id identifier, such as {@code ankle-foot}
 * @param sort cast, worn or used
 * @param name in family words
 * @param says what a family reads about it; empty while the clinic has not accepted it
 * @param skinEvery days from one look at the skin to the next, unless the clinician says otherwise
 * @param growthEvery days from one look at the fit to the next, unless the clinician says otherwise
 * @param provenance where it comes from and who has read it
 */
public record Kind(
        String id,
        Sort sort,
        Bilingual name,
        List<Bilingual> says,
        Optional<Integer> skinEvery,
        Optional<Integer> growthEvery,
        Provenance provenance) {

    /** What sort of thing. */
    public enum Sort {
        /** One of a series of casts; has days of its own. */
        CAST,
        /** Worn on the body: a splint, a brace. */
        WORN,
        /** Stood, sat, walked or slept in. */
        USED
    }

    public Kind {
        says = List.copyOf(says);
    }
}
