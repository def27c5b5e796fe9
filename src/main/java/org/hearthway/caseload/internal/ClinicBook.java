package org.hearthway.caseload.internal;

import java.util.EnumMap;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.caseload.engine.RuleBook;
import org.springframework.stereotype.Component;

/** Lays what the clinic says over the numbers that ship. */
@Component
class ClinicBook {

    private final NeedsContent content;
    private final FigureRows rows;

    ClinicBook(NeedsContent content, FigureRows rows) {
        this.content = content;
        this.rows = rows;
    }

    /** The bounds by which the list is kept. A number out of the bounds of this version of the program does not count. */
    RuleBook now() {
        var own = new EnumMap<Figure, Integer>(Figure.class);
        rows.newest()
                .forEach(said ->
                        said.number().filter(said.figure()::holds).ifPresent(number -> own.put(said.figure(), number)));
        return own.isEmpty() ? content.book() : content.book().with(own);
    }

    /** Another one when anything was said since. */
    long edition() {
        return rows.edition();
    }
}
