package org.hearthway.program.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Entry;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.Exercise.Traits;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.ProgramRules.Bound;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.week.Ask;

/** Reads one file of an exercise. Muscle groups and things have their identifiers for names until all is read. */
final class ExerciseReader {

    private static final Bound AGES = new Bound(0, 21);
    private static final Bound DAYS = new Bound(1, 7);
    private static final Set<String> LEVELS = Set.of("1", "2", "3", "4", "5");
    private static final int LEAST_STEPS = 3;
    private static final int MOST_STEPS = 6;

    private final Entry file;
    private final Figures figures;

    ExerciseReader(Entry file, Figures figures) {
        this.file = file;
        this.figures = figures;
    }

    Exercise read() {
        return new Exercise(
                file.id(),
                file.bilingual("name"),
                file.bilingual("purpose"),
                steps(),
                file.bilingual("stop"),
                file.choice("kind", Exercise.Kind.class),
                traits(),
                new LinkedHashSet<>(file.texts("tags")),
                file.yes("sided"),
                dose(file.block("dose")),
                ranges(),
                figures.named(file.text("figure")),
                file.maybeText("easier"),
                file.maybeText("harder"),
                file.provenance());
    }

    private List<Bilingual> steps() {
        var steps = file.bilinguals("steps");
        if (steps.size() < LEAST_STEPS || steps.size() > MOST_STEPS) {
            file.wrong("steps", "\"steps\" has " + steps.size(), LEAST_STEPS + " to " + MOST_STEPS + " steps");
        }
        return steps;
    }

    private Traits traits() {
        if (!file.has("equipment")) {
            file.wrong("equipment", "\"equipment\" is missing", "things at home, or [] for none");
        }
        return new Traits(
                some("muscle-groups", named("muscle-groups")),
                new LinkedHashSet<>(some("joints", file.choices("joints", Exercise.Joint.class))),
                some("positions", file.choices("positions", Exercise.Position.class)),
                named("equipment"),
                file.choice("helper", Exercise.Help.class),
                levels(),
                file.choice("phase", Ask.Phase.class),
                file.yes("play"));
    }

    private <T> List<T> some(String key, List<T> found) {
        if (found.isEmpty()) {
            file.wrong(key, "\"" + key + "\" names nothing", "one or more");
        }
        return found;
    }

    private List<Named> named(String key) {
        var ids = file.texts(key);
        if (new LinkedHashSet<>(ids).size() < ids.size()) {
            file.wrong(key, "\"" + key + "\" names one twice", "each once");
        }
        return ids.stream().map(id -> new Named(id, Bilingual.same(id))).toList();
    }

    private Set<Integer> levels() {
        var levels = new LinkedHashSet<Integer>();
        for (var text : some("levels", file.texts("levels"))) {
            if (!LEVELS.contains(text) || !levels.add(Integer.valueOf(text))) {
                file.wrong("levels", "\"levels\" has " + text, "each of 1 to 5 at most once");
            }
        }
        return levels;
    }

    private static Dose dose(Entry entry) {
        var sets = within(entry, "sets", ProgramRules.SETS);
        var repetitions = within(entry, "repetitions", ProgramRules.REPETITIONS);
        var hold = within(entry, "hold-seconds", ProgramRules.HOLD_SECONDS);
        var minutes = within(entry, "minutes", ProgramRules.MINUTES);
        var timesADay = within(entry, "times-a-day", ProgramRules.TIMES_A_DAY);
        if (repetitions.isPresent() == minutes.isPresent()) {
            entry.wrong("repetitions", "the dose has repetitions and minutes, or neither", "one of the two");
        }
        entry.done();
        return new Dose(sets.orElse(1), repetitions.orElse(0), hold.orElse(0), minutes.orElse(0), timesADay.orElse(1));
    }

    private static Optional<Integer> within(Entry entry, String key, Bound bound) {
        return entry.maybeInteger(key, bound.min(), bound.max());
    }

    private List<UsualDose> ranges() {
        var ranges = new ArrayList<UsualDose>();
        for (var block : some("usual", file.list("usual"))) {
            var range = range(block);
            if (!ranges.isEmpty()
                    && range.ages().least()
                            != ranges.get(ranges.size() - 1).ages().most() + 1) {
                block.wrong(
                        "ages",
                        "\"ages\" is " + range.ages(),
                        "the year after the block above ends, "
                                + (ranges.get(ranges.size() - 1).ages().most() + 1));
            }
            ranges.add(range);
        }
        return ranges;
    }

    private static UsualDose range(Entry block) {
        var ages = span(block, "ages", AGES);
        if (ages.isEmpty() && !block.has("ages")) {
            block.wrong("ages", "\"ages\" is missing", "a range of years such as 2-18");
        }
        var range = new UsualDose(
                ages.orElse(new Span(AGES.min(), AGES.max())),
                span(block, "sets", ProgramRules.SETS),
                span(block, "repetitions", ProgramRules.REPETITIONS),
                span(block, "hold-seconds", ProgramRules.HOLD_SECONDS),
                span(block, "minutes", ProgramRules.MINUTES),
                span(block, "times-a-day", ProgramRules.TIMES_A_DAY),
                span(block, "days", DAYS),
                block.text("source"));
        if (range.days().isEmpty()) {
            block.wrong("days", "\"days\" is missing", "days a week such as 3-7");
        }
        if (range.repetitions().isPresent() == range.minutes().isPresent()) {
            block.wrong("repetitions", "the range has repetitions and minutes, or neither", "one of the two");
        }
        block.done();
        return range;
    }

    private static Optional<Span> span(Entry block, String key, Bound bound) {
        return block.maybeText(key).flatMap(text -> {
            var span = Span.parse(text).filter(s -> bound.holds(s.least()) && bound.holds(s.most()));
            if (span.isEmpty()) {
                block.wrong(
                        key,
                        "\"" + key + "\" is " + text,
                        "a number or a range such as 2-5, within " + bound.min() + " to " + bound.max());
            }
            return span;
        });
    }
}
