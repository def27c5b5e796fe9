package org.hearthway.program.internal;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.program.Exercise;
import org.hearthway.program.StarterSets;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;
import org.springframework.stereotype.Component;

/** Reads {@code content/starters}, one file a beginning of a program. */
@Component
class StarterKind implements ContentKind, StarterSets {

    private static final int LEVELS = 5;

    /** Where the lines lie until somebody takes them. */
    private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

    private record Line(String exercise, Rhythm rhythm, Priority priority, Entry file) {}

    private record Read(
            String id, Bilingual name, Bilingual about, Set<Integer> levels, List<Line> lines, Entry file) {}

    private final ExerciseKind exercises;
    private final List<Read> read = new ArrayList<>();
    private List<StarterSet> sets = List.of();

    StarterKind(ExerciseKind exercises) {
        this.exercises = exercises;
    }

    @Override
    public String place() {
        return "starters";
    }

    @Override
    public void read(Entry file) {
        read.add(new Read(
                file.id(),
                file.bilingual("name"),
                file.bilingual("about"),
                levels(file),
                file.blocks("lines").stream().map(StarterKind::line).toList(),
                file));
        file.provenance();
    }

    private static Set<Integer> levels(Entry file) {
        var levels = new HashSet<Integer>();
        for (var level : file.texts("levels")) {
            if (level.matches("[1-" + LEVELS + "]")) {
                levels.add(Integer.valueOf(level));
            } else {
                file.wrong("levels", "\"" + level + "\" is no level", "1 to " + LEVELS);
            }
        }
        return levels;
    }

    private static Line line(Entry line) {
        var exercise = line.text("exercise");
        var days = line.integer("days", 1, DayOfWeek.values().length);
        var spread = line.maybeChoice("spread", Spread.class).orElse(Spread.ANY);
        var priority = line.maybeChoice("priority", Priority.class).orElse(Priority.SECOND);
        line.done();
        return new Line(exercise, new Rhythm(days, spread), priority, line);
    }

    @Override
    public void check() {
        sets = read.stream().map(this::set).toList();
    }

    private StarterSet set(Read one) {
        var lines = new ArrayList<ProgramLine>();
        var sided = new HashMap<String, Boolean>();
        for (var line : one.lines()) {
            var exercise = exercises.find(line.exercise());
            if (exercise.isEmpty()) {
                line.file().wrong("exercise", "there is no exercise " + line.exercise(), "a file of content/exercises");
            }
            exercise.ifPresent(known -> {
                lines.add(line(line, known));
                sided.put(known.id(), known.sided());
            });
        }
        if (!ProgramRules.check(lines, sided).isEmpty()) {
            one.file().wrong("lines", "these lines cannot stand in one program", "each exercise once");
        }
        return new StarterSet(one.id(), one.name(), one.about(), one.levels(), lines);
    }

    private static ProgramLine line(Line line, Exercise exercise) {
        return new ProgramLine(
                exercise.id(),
                new Prescription(
                        exercise.usual(),
                        Optional.empty(),
                        exercise.sided() ? Side.EACH : Side.NONE,
                        new Load.Body(),
                        line.rhythm(),
                        Optional.empty(),
                        Optional.empty()),
                EnumSet.copyOf(Arrays.asList(DayOfWeek.values())),
                SOME_DAY,
                Optional.empty(),
                "",
                line.priority(),
                "",
                List.of());
    }

    @Override
    public List<StarterSet> all() {
        return sets;
    }
}
