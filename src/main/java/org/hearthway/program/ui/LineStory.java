package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import org.hearthway.parts.Tags;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramDiff.Field;
import org.hearthway.program.engine.ProgramLine;

/** A line in words: dose, days, dates, note; what differs from the other version is marked. */
final class LineStory {

    private static final Set<Field> DOSE =
            Set.of(Field.SETS, Field.REPETITIONS, Field.HOLD, Field.MINUTES, Field.TIMES_A_DAY, Field.SIDE, Field.LOAD);

    private LineStory() {}

    static Div of(Say say, ProgramLine line, Collection<Field> differs) {
        var story = Tags.div("hw-story");
        story.add(part(say.dose(line), differs.stream().anyMatch(DOSE::contains)));
        story.add(part(say.days(line), differs.contains(Field.DAYS)));
        story.add(part(say.say("from", say.date(line.from())), differs.contains(Field.FROM)));
        if (line.until().isPresent() || differs.contains(Field.UNTIL)) {
            var until = line.until().map(day -> say.say("until", say.date(day))).orElseGet(() -> say.say("open"));
            story.add(part(until, differs.contains(Field.UNTIL)));
        }
        beyondDose(say, story, line, differs);
        if (line.priority() != Priority.SECOND || differs.contains(Field.PRIORITY)) {
            story.add(part(
                    say.say("priority.says", say.one("priority", line.priority())), differs.contains(Field.PRIORITY)));
        }
        if (!line.beyond().isBlank()) {
            story.add(part(say.say("beyond", line.beyond()), false));
        }
        leaves(say, story, line, differs.contains(Field.EXCEPTIONS));
        if (!line.note().isBlank() || differs.contains(Field.NOTE)) {
            var note = line.note().isBlank() ? say.say("note.none") : say.say("quoted", line.note());
            story.add(part(note, differs.contains(Field.NOTE)));
        }
        return story;
    }

    /** Rest, effort and the rule for more; that one of them is no longer said is said where it differs. */
    private static void beyondDose(Say say, Div story, ProgramLine line, Collection<Field> differs) {
        var prescription = line.prescription();
        said(
                story,
                prescription.restSeconds().map(rest -> say.say("rest", rest)),
                say.say("rest.none"),
                differs.contains(Field.REST));
        said(
                story,
                prescription.effort().map(effort -> say.say("effort", effort)),
                say.say("effort.none"),
                differs.contains(Field.EFFORT));
        said(
                story,
                prescription.progression().map(rule -> say.rule(line, rule)),
                say.say("rule.none"),
                differs.contains(Field.PROGRESSION));
    }

    private static void said(Div story, Optional<String> says, String none, boolean differs) {
        if (says.isPresent() || differs) {
            story.add(part(says.orElse(none), differs));
        }
    }

    private static void leaves(Say say, Div story, ProgramLine line, boolean differs) {
        for (var leave : line.exceptions()) {
            var movement = say.library().precaution(leave.tag()).map(name -> name.in(say.language()));
            story.add(part(
                    say.say("leave.says", movement.orElse(leave.tag()), say.date(leave.until()), leave.reason()),
                    differs));
        }
        if (line.exceptions().isEmpty() && differs) {
            story.add(part(say.say("leave.none"), true));
        }
    }

    private static Span part(String says, boolean differs) {
        var part = Tags.span("", says);
        part.setClassName("new", differs);
        return part;
    }
}
