package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Collection;
import java.util.Set;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.ProgramDiff.Field;
import org.hearthway.program.engine.ProgramLine;

/** A line in words: dose, days, dates, note; what differs from the other version is marked. */
final class LineStory {

    private static final Set<Field> DOSE =
            Set.of(Field.SETS, Field.REPETITIONS, Field.HOLD, Field.MINUTES, Field.TIMES_A_DAY, Field.SIDE);

    private LineStory() {}

    static Div of(Say say, ProgramLine line, Collection<Field> differs) {
        var story = Tags.div("hw-story");
        story.add(part(say.dose(line), differs.stream().anyMatch(DOSE::contains)));
        story.add(part(say.program().days(say.language(), line.days()), differs.contains(Field.DAYS)));
        story.add(part(say.say("from", say.date(line.from())), differs.contains(Field.FROM)));
        if (line.until().isPresent() || differs.contains(Field.UNTIL)) {
            var until = line.until().map(day -> say.say("until", say.date(day))).orElseGet(() -> say.say("open"));
            story.add(part(until, differs.contains(Field.UNTIL)));
        }
        if (!line.note().isBlank() || differs.contains(Field.NOTE)) {
            var note = line.note().isBlank() ? say.say("note.none") : say.say("quoted", line.note());
            story.add(part(note, differs.contains(Field.NOTE)));
        }
        return story;
    }

    private static Span part(String says, boolean differs) {
        var part = Tags.span("", says);
        part.setClassName("new", differs);
        return part;
    }
}
