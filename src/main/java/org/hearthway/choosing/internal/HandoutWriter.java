package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.choosing.Handout;
import org.hearthway.choosing.Handout.Body;
import org.hearthway.choosing.Handout.Said;
import org.hearthway.choosing.Handout.Section;
import org.hearthway.choosing.engine.Criterion;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Known;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Truth;
import org.hearthway.content.SignOff;
import org.springframework.stereotype.Component;

/** Writes what the family takes home, in words that the clinic has accepted and in its own where it has some. */
@Component
class HandoutWriter {

    private final ChoosingKind content;
    private final SignOff signOff;

    HandoutWriter(ChoosingKind content, SignOff signOff) {
        this.content = content;
        this.signOff = signOff;
    }

    Handout write(Known known) {
        var items = new ArrayList<>(
                content.guides().stream().map(ChoosingKind.Read::item).toList());
        items.add(content.asked().item());
        var shown = signOff.shownAmong(items);
        var names = shown.contains(content.asked().item()) ? factNames() : Map.<String, Bilingual>of();
        return new Handout(content.guides().stream()
                .map(read -> {
                    var guide = GuidePieces.with(read.guide(), signOff.ownWords(read.item()));
                    return new Section(
                            guide.family().name(),
                            shown.contains(read.item()) ? Optional.of(body(guide, known, names)) : Optional.empty());
                })
                .toList());
    }

    /** What families call each fact. */
    private Map<String, Bilingual> factNames() {
        var own = signOff.ownWords(content.asked().item());
        var names = new HashMap<String, Bilingual>();
        var facts = content.asked().facts();
        for (var place = 0; place < facts.size(); place++) {
            names.put(
                    facts.get(place).id(),
                    own.getOrDefault(place + 1, facts.get(place).family()));
        }
        return names;
    }

    private static Body body(Guide guide, Known known, Map<String, Bilingual> names) {
        var lines = guide.read(known);
        var missing = missing(guide, lines);
        var change = guide.change().shown().in(known);
        return new Body(
                guide.family().what(),
                guide.family().asks(),
                lines.stream().flatMap(line -> said(line).stream()).toList(),
                missing.stream()
                        .filter(names::containsKey)
                        .map(names::get)
                        .distinct()
                        .toList(),
                !names.keySet().containsAll(missing),
                change == Truth.YES
                        ? List.of(
                                guide.change().says().family(),
                                guide.change().beside().family())
                        : List.of(),
                change == Truth.NO ? Optional.of(guide.change().otherwise().family()) : Optional.empty());
    }

    private static Optional<Said> said(Line line) {
        return line.holds().flatMap(Criterion.Case::family).map(words -> new Said(line.mark(), words));
    }

    /** The facts that are missing for what a family would read. */
    private static Set<String> missing(Guide guide, List<Line> lines) {
        var missing = new LinkedHashSet<String>();
        for (var criterion : guide.criteria()) {
            if (criterion.cases().stream().anyMatch(made -> made.family().isPresent())) {
                lines.stream()
                        .filter(line -> line.criterion().equals(criterion.id()))
                        .forEach(line -> missing.addAll(line.missing()));
            }
        }
        return missing;
    }
}
