package org.hearthway.content;

import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Bilingual;

/**
 * A piece of content that families read, laid out for the person who accepts it.
 *
 * @param item what is accepted
 * @param title what it is called
 * @param texts everything else in it that a family reads, in order
 * @param provenance source, version, reviews
 */
public record FamilyText(SignOff.Item item, Bilingual title, List<Bilingual> texts, Provenance provenance) {

    public FamilyText {
        texts = List.copyOf(texts);
    }

    /** All that a family reads, by place: the title, then the texts. */
    public List<Bilingual> pieces() {
        var pieces = new ArrayList<Bilingual>();
        pieces.add(title);
        pieces.addAll(texts);
        return List.copyOf(pieces);
    }
}
