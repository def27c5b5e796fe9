package org.hearthway.content;

import java.util.List;
import org.hearthway.base.Bilingual;

/**
 * A piece of content that families read, laid out for the person who accepts it.
 *
 * @param item what is accepted
 * @param title what it is called
 * @param texts everything in it that a family reads, in order
 * @param provenance source, version, reviews
 */
public record FamilyText(SignOff.Item item, Bilingual title, List<Bilingual> texts, Provenance provenance) {

    public FamilyText {
        texts = List.copyOf(texts);
    }
}
