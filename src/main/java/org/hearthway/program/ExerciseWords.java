package org.hearthway.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.week.Ask;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** What an exercise asks for and how much of it is usual, in the words of staff. */
@Component
public class ExerciseWords {

    private static final List<String> LEVELS = List.of("I", "II", "III", "IV", "V");

    private final Words words;

    ExerciseWords(Words words) {
        this.words = words;
    }

    /** "knee". */
    public String joint(Language language, Exercise.Joint joint) {
        return words.say(language, "program.exercise.joint." + joint);
    }

    /** "on the back". */
    public String position(Language language, Exercise.Position position) {
        return words.say(language, "program.exercise.position." + position);
    }

    /** "a grown-up’s hands". */
    public String help(Language language, Exercise.Help help) {
        return words.say(language, "program.exercise.help." + help);
    }

    /** "warm-up". */
    public String phase(Language language, Ask.Phase phase) {
        return words.say(language, "program.exercise.phase." + phase);
    }

    /**
     * "GMFCS III".
     *
     * @param level of gross motor function, 1 to 5
     */
    public String level(Language language, int level) {
        return words.say(language, "program.exercise.level", LEVELS.get(level - 1));
    }

    /** All that a search may find it by besides its name: muscle groups, joints, positions, things, help, play. */
    public String searched(Language language, Exercise exercise) {
        var traits = exercise.traits();
        var found = new ArrayList<String>();
        named(language, traits.muscleGroups(), found);
        named(language, traits.things(), found);
        traits.joints().stream().sorted().map(joint -> joint(language, joint)).forEach(found::add);
        traits.positions().stream()
                .map(position -> position(language, position))
                .forEach(found::add);
        found.add(help(language, traits.help()));
        traits.levels().stream().sorted().map(level -> level(language, level)).forEach(found::add);
        found.add(phase(language, traits.phase()));
        if (traits.play()) {
            found.add(words.say(language, "program.exercise.play"));
        }
        return String.join(" · ", found);
    }

    private static void named(Language language, List<Named> named, List<String> found) {
        named.forEach(one -> found.add(one.name().in(language)));
    }

    /** "Usual at 7 to 18 years: rounds 1 to 3, times 6 to 15, days a week 2 to 4. Source: …". */
    public String usual(Language language, UsualDose usual) {
        var parts = new ArrayList<String>();
        usual.repetitions()
                .ifPresent(times -> parts.add(words.say(
                        language,
                        "program.exercise.usual.times",
                        span(language, usual.sets().orElse(new Span(1, 1))),
                        span(language, times))));
        part(language, "program.exercise.usual.minutes", usual.minutes(), parts);
        part(language, "program.exercise.usual.hold", usual.holdSeconds(), parts);
        part(language, "program.exercise.usual.aDay", usual.timesADay(), parts);
        part(language, "program.exercise.usual.days", usual.days(), parts);
        return words.say(
                language,
                "program.exercise.usual",
                span(language, usual.ages()),
                String.join(", ", parts),
                usual.source());
    }

    private void part(Language language, String key, Optional<Span> span, List<String> parts) {
        span.ifPresent(range -> parts.add(words.say(language, key, span(language, range))));
    }

    /** "2 to 5", or "3". */
    public String span(Language language, Span span) {
        return span.least() == span.most()
                ? words.say(language, "program.exercise.number", span.least())
                : words.say(language, "program.exercise.span", span.least(), span.most());
    }
}
