package org.hearthway.choosing.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Known;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.content.ContentReading;

/** The shipped facts and guides, read without the rest of the program. */
final class Shipped {

    private Shipped() {}

    static ChoosingKind content() {
        var kind = new ChoosingKind();
        assertThat(ContentReading.shipped(kind)).isEmpty();
        return kind;
    }

    static Guide guide(ChoosingKind content, String path) {
        return content.guides().stream()
                .map(ChoosingKind.Read::guide)
                .filter(guide -> guide.id().equals(path))
                .findFirst()
                .orElseThrow();
    }

    /** The marks of one criterion for a child of whom this one fact is known. */
    static List<Mark> marks(Guide guide, String criterion, int years, Map<String, Set<String>> answers) {
        return guide.read(new Known(answers, years)).stream()
                .filter(line -> line.criterion().equals(criterion))
                .map(Line::mark)
                .toList();
    }
}
