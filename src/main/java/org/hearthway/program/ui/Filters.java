package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Help;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.Exercise.Named;

/** Lists that narrow what the library offers: kind, muscle group, level of the child, hands that are needed, things. */
final class Filters extends Span {

    /** What must be at home. */
    private record Things(boolean none, Optional<Named> one) {}

    private final transient Say say;
    private final transient Runnable changed;
    private Optional<Kind> kind = Optional.empty();
    private transient Optional<Named> group = Optional.empty();
    private Optional<Integer> level = Optional.empty();
    private Optional<Help> help = Optional.empty();
    private transient Things things = new Things(false, Optional.empty());

    Filters(Say say, About about, Runnable changed) {
        this.say = say;
        this.changed = changed;
        addClassName("hw-filter");
        getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("filter"));
        choose("kind", List.of(Kind.values()), one -> say.one("kind", one), one -> kind = one);
        choose("group", named(e -> e.traits().muscleGroups().stream()), this::name, one -> group = one);
        choose("level", levels(about), one -> say.exercises().level(say.language(), one), one -> level = one);
        choose("help", List.of(Help.values()), one -> say.exercises().help(say.language(), one), one -> help = one);
        var what = new ArrayList<Things>();
        what.add(new Things(true, Optional.empty()));
        named(e -> e.traits().things().stream()).forEach(thing -> what.add(new Things(false, Optional.of(thing))));
        choose(
                "things",
                what,
                one -> one.one().map(this::name).orElseGet(() -> say.say("filter.things.nothing")),
                one -> things = one.orElseGet(() -> new Things(false, Optional.empty())));
    }

    private String name(Named one) {
        return one.name().in(say.language());
    }

    /** The child's level first. */
    private static List<Integer> levels(About about) {
        var others = Stream.of(1, 2, 3, 4, 5).filter(one -> !about.level().equals(Optional.of(one)));
        return Stream.concat(about.level().stream(), others).toList();
    }

    /** What exercises of the library name, each once, by its name. */
    private List<Named> named(Function<Exercise, Stream<Named>> of) {
        return say.library().all().stream()
                .flatMap(of)
                .distinct()
                .sorted(Comparator.comparing(this::name))
                .toList();
    }

    private <T> void choose(
            String key, List<T> choices, Function<T, String> words, java.util.function.Consumer<Optional<T>> taken) {
        var all = new ArrayList<Optional<T>>();
        all.add(Optional.empty());
        choices.forEach(choice -> all.add(Optional.of(choice)));
        add(new Choose(
                say.one("filter", key),
                all,
                Optional.<T>empty(),
                one -> one.map(words).orElseGet(() -> say.one("filter.any", key)),
                one -> {
                    taken.accept(one);
                    changed.run();
                }));
    }

    /** Whether anything is chosen. */
    boolean isOn() {
        return kind.isPresent()
                || group.isPresent()
                || level.isPresent()
                || help.isPresent()
                || things.none()
                || things.one().isPresent();
    }

    /** Whether the exercise is one of those chosen. */
    boolean takes(Exercise exercise) {
        var traits = exercise.traits();
        return kind.filter(one -> exercise.kind() != one).isEmpty()
                && group.filter(one -> !traits.muscleGroups().contains(one)).isEmpty()
                && level.filter(one -> !traits.levels().contains(one)).isEmpty()
                && help.filter(one -> traits.help() != one).isEmpty()
                && (!things.none() || traits.things().isEmpty())
                && things.one().filter(one -> !traits.things().contains(one)).isEmpty();
    }
}
