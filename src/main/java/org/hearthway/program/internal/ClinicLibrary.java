package org.hearthway.program.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.SignOff;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.engine.Pace;
import org.springframework.context.annotation.Primary;
import org.springframework.stereotype.Component;

/** The library as this clinic tells it: the content, with the clinic's own words where it has written some. */
@Primary
@Component
class ClinicLibrary implements ExerciseLibrary {

    private final ExerciseKind content;
    private final KeptExercises kept;
    private final SignOff signOff;

    ClinicLibrary(ExerciseKind content, KeptExercises kept, SignOff signOff) {
        this.content = content;
        this.kept = kept;
        this.signOff = signOff;
    }

    @Override
    public List<Exercise> all() {
        return content.all().stream()
                .map(this::inTheClinicsWords)
                .sorted(Comparator.comparing(exercise -> exercise.name().en()))
                .toList();
    }

    @Override
    public Optional<Exercise> find(String id) {
        return content.find(id).or(() -> kept.last(id)).map(this::inTheClinicsWords);
    }

    @Override
    public boolean isGone(String id) {
        return content.find(id).isEmpty();
    }

    private Exercise inTheClinicsWords(Exercise exercise) {
        var own = signOff.ownWords(exercise.item());
        return own.isEmpty() ? exercise : with(exercise, own);
    }

    /** By the places of {@link ExerciseKind#familyTexts}: name, purpose, steps, stop. */
    private static Exercise with(Exercise was, Map<Integer, Bilingual> own) {
        var steps = IntStream.range(0, was.steps().size())
                .mapToObj(step -> own.getOrDefault(step + 2, was.steps().get(step)))
                .toList();
        return was.told(
                own.getOrDefault(0, was.name()),
                own.getOrDefault(1, was.purpose()),
                steps,
                own.getOrDefault(steps.size() + 2, was.stop()));
    }

    @Override
    public Optional<Bilingual> precaution(String tag) {
        return content.precaution(tag);
    }

    @Override
    public Pace pace() {
        return content.pace();
    }
}
