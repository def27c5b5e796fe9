package org.hearthway.program.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.Exercise.Traits;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.internal.ExerciseCheck.Read;
import org.springframework.stereotype.Component;

/** Reads {@code content/exercises}, one file an exercise. */
@Component
class ExerciseKind implements ContentKind, ExerciseLibrary {

    private final Map<String, Read> read = new LinkedHashMap<>();
    private final PrecautionTags known;
    private final MuscleGroups groups;
    private final HomeThings things;
    private final PaceSetting pace;
    private final Figures figures;
    private List<Exercise> sorted = List.of();

    ExerciseKind(PrecautionTags known, MuscleGroups groups, HomeThings things, PaceSetting pace, Figures figures) {
        this.known = known;
        this.groups = groups;
        this.things = things;
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
        var exercise = new ExerciseReader(file, figures).read();
        read.put(exercise.id(), new Read(exercise, file));
    }

    @Override
    public void check() {
        new ExerciseCheck(read, known, groups, things, figures).run();
        read.replaceAll((id, one) -> new Read(named(one.exercise()), one.file()));
        sorted = read.values().stream()
                .map(Read::exercise)
                .sorted(Comparator.comparing(exercise -> exercise.name().en()))
                .toList();
    }

    private Exercise named(Exercise exercise) {
        var traits = exercise.traits();
        return exercise.with(new Traits(
                groups.named(ids(traits.muscleGroups())),
                traits.joints(),
                traits.positions(),
                things.named(ids(traits.things())),
                traits.help(),
                traits.levels(),
                traits.phase(),
                traits.play()));
    }

    private static List<String> ids(List<Named> named) {
        return named.stream().map(Named::id).toList();
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
    public boolean isGone(String id) {
        return !read.containsKey(id);
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
