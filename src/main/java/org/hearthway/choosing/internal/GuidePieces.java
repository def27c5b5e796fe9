package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hearthway.base.Bilingual;
import org.hearthway.choosing.engine.Criterion;
import org.hearthway.choosing.engine.Guide;

/** Everything in a guide that a family reads, piece by piece in a fixed order: its name first. */
final class GuidePieces {

    private GuidePieces() {}

    /** The pieces, by place. */
    static List<Bilingual> of(Guide guide) {
        var pieces = new ArrayList<Bilingual>();
        each(guide, piece -> {
            pieces.add(piece);
            return piece;
        });
        return List.copyOf(pieces);
    }

    /** The same guide with other words at some places. */
    static Guide with(Guide guide, Map<Integer, Bilingual> own) {
        var places = new int[1];
        return each(guide, piece -> own.getOrDefault(places[0]++, piece));
    }

    private static Guide each(Guide guide, UnaryOperator<Bilingual> words) {
        var family = new Guide.ForFamily(
                words.apply(guide.family().name()),
                words.apply(guide.family().what()),
                words.apply(guide.family().asks()));
        var was = guide.change();
        var change = new Guide.Change(
                was.shown(),
                told(was.says(), words),
                told(was.beside(), words),
                told(was.otherwise(), words),
                was.source());
        var criteria = guide.criteria().stream()
                .map(criterion -> new Criterion(
                        criterion.id(),
                        criterion.cases().stream()
                                .map(made -> new Criterion.Case(
                                        made.when(),
                                        made.means(),
                                        made.says(),
                                        made.family().map(words)))
                                .toList(),
                        criterion.source()))
                .toList();
        return new Guide(guide.id(), guide.place(), guide.name(), criteria, guide.points(), change, family);
    }

    private static Guide.Told told(Guide.Told was, UnaryOperator<Bilingual> words) {
        return new Guide.Told(was.says(), words.apply(was.family()));
    }
}
