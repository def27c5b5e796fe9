package org.hearthway.program.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.ProgramRules.Bound;
import org.springframework.stereotype.Component;

/** Reads {@code content/exercises}, one file an exercise. */
@Component
class ExerciseKind implements ContentKind, ExerciseLibrary {

    private record Read(Exercise exercise, Entry file) {}

    private final Map<String, Read> read = new LinkedHashMap<>();
    private final PrecautionTags known;
    private final PaceSetting pace;
    private final Figures figures;
    private List<Exercise> sorted = List.of();

    ExerciseKind(PrecautionTags known, PaceSetting pace, Figures figures) {
        this.known = known;
        this.pace = pace;
        this.figures = figures;
    }

    @Override
    public String place() {
        return "exercises";
    }

    @Override
    public List<FamilyText> familyTexts() {
        return sorted.stream().map(ExerciseKind::familyText).toList();
    }

    private static FamilyText familyText(Exercise exercise) {
        var texts = new ArrayList<Bilingual>();
        texts.add(exercise.purpose());
        texts.addAll(exercise.steps());
        texts.add(exercise.stop());
        return new FamilyText(exercise.item(), exercise.name(), texts, exercise.provenance());
    }

    @Override
    public void read(Entry file) {
        var steps = file.bilinguals("steps");
        if (steps.size() < 3 || steps.size() > 6) {
            file.wrong("steps", "\"steps\" has " + steps.size(), "3 to 6 steps");
        }
        var exercise = new Exercise(
                file.id(),
                file.bilingual("name"),
                file.bilingual("purpose"),
                steps,
                file.bilingual("stop"),
                file.choice("kind", Exercise.Kind.class),
                file.bilingual("muscles"),
                new LinkedHashSet<>(file.texts("tags")),
                file.yes("sided"),
                file.yes("helper"),
                dose(file.block("dose")),
                figures.named(file.text("figure")),
                file.maybeText("easier"),
                file.maybeText("harder"),
                file.provenance());
        read.put(exercise.id(), new Read(exercise, file));
    }

    private static Dose dose(Entry entry) {
        var sets = entry.maybeInteger("sets", ProgramRules.SETS.min(), ProgramRules.SETS.max());
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

    @Override
    public void check() {
        read.values().forEach(this::check);
        var all = new ArrayList<>(read.values().stream().map(Read::exercise).toList());
        all.sort(java.util.Comparator.comparing(e -> e.name().en()));
        sorted = List.copyOf(all);
    }

    private void check(Read one) {
        var exercise = one.exercise();
        for (var tag : exercise.tags()) {
            if (!known.all().contains(tag)) {
                one.file()
                        .wrong(
                                "tags",
                                "\"" + tag + "\" is no known precaution",
                                "one of " + String.join(", ", known.all()));
            }
        }
        link(one, "easier", exercise.easier());
        link(one, "harder", exercise.harder());
        if (!figures.has(exercise.figure().id())) {
            one.file()
                    .wrong(
                            "figure",
                            "there is no picture " + exercise.figure().id(),
                            "the name of a file of content/figures");
        }
    }

    private void link(Read one, String key, Optional<String> target) {
        target.filter(id -> !read.containsKey(id) || id.equals(one.exercise().id()))
                .ifPresent(id -> one.file().wrong(key, "\"" + key + "\" is " + id, "another exercise's file name"));
    }

    @Override
    public List<Exercise> all() {
        return sorted;
    }

    @Override
    public Optional<Exercise> find(String id) {
        return Optional.ofNullable(read.get(id)).map(Read::exercise);
    }

    @Override
    public Optional<Bilingual> precaution(String tag) {
        return known.name(tag);
    }

    @Override
    public Pace pace() {
        return pace.pace();
    }
}
