package org.hearthway.program.internal;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.content.Entry;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.Exercise.Position;
import org.hearthway.words.ReadingLevel;

/** What holds for the exercises of a library besides the shape of each file. */
final class ExerciseCheck {

    /** Sixth grade, the clinic's own bound for family words. */
    private static final double HARDEST_GRADE = 6.9;

    /** "Fairly easy" on the Fernández-Huerta scale begins here. */
    private static final double LEAST_EASE = 70;

    /** Strength work rests a day between two days: of seven days that go round, three; four with one pair that touches. */
    private static final int MOST_STRENGTH_DAYS = 4;

    private static final String BY_FORCE = "forced-passive-range";
    private static final String PASSIVE = "passive-";

    /** Positions that a rule of care can forbid, with the tag that it would name. */
    private static final Map<Position, String> TOLD_BY_TAG = Map.of(
            Position.STANDING, "standing",
            Position.WALKING, "standing",
            Position.TUMMY, "prone-on-pump",
            Position.LONG_SITTING, "long-sitting");

    /** Muscle groups whose stretch a rule of care can forbid, with the tag that it would name. */
    private static final Map<String, String> STRETCH_TOLD_BY_TAG =
            Map.of("hamstrings", "hamstring-stretch", "adductors", "hip-forced-abduction");

    /** An exercise with the file that says so. */
    record Read(Exercise exercise, Entry file) {}

    private final Map<String, Read> all;
    private final PrecautionTags tags;
    private final MuscleGroups groups;
    private final HomeThings things;
    private final Figures figures;

    ExerciseCheck(Map<String, Read> all, PrecautionTags tags, MuscleGroups groups, HomeThings things, Figures figures) {
        this.all = all;
        this.tags = tags;
        this.groups = groups;
        this.things = things;
        this.figures = figures;
    }

    /** Notes every mistake at the file that makes it. */
    void run() {
        all.values().forEach(this::alone);
        all.values().forEach(this::links);
        names();
    }

    private void alone(Read one) {
        boolean sound = one.file().isSound();
        known(one);
        if (sound) {
            // stand-ins for what could not be read would make mistakes of their own
            dose(one);
            movedByHands(one);
            toldByTag(one);
            reading(one);
        }
    }

    private void known(Read one) {
        var exercise = one.exercise();
        var file = one.file();
        exercise.tags().stream()
                .filter(tag -> !tags.all().contains(tag))
                .sorted()
                .forEach(tag -> file.wrong("tags", "\"" + tag + "\" is no known precaution", oneOf(tags.all())));
        known(file, "muscle-groups", exercise.traits().muscleGroups(), groups);
        known(file, "equipment", exercise.traits().things(), things);
        if (!figures.has(exercise.figure().id())) {
            file.wrong(
                    "figure", "there is no picture " + exercise.figure().id(), "the name of a file of content/figures");
        }
    }

    private static void known(Entry file, String key, List<Named> named, NamedThings names) {
        named.stream()
                .map(Named::id)
                .filter(id -> !names.knows(id))
                .forEach(
                        id -> file.wrong(key, "\"" + id + "\" is not in content/" + names.place(), oneOf(names.all())));
    }

    private static String oneOf(Iterable<String> names) {
        return "one of " + String.join(", ", names);
    }

    private static void dose(Read one) {
        var exercise = one.exercise();
        for (var range : exercise.ranges()) {
            if ((exercise.usual().minutes() > 0) != range.minutes().isPresent()) {
                one.file()
                        .wrong(
                                "usual",
                                "the dose and its usual range for ages " + range.ages() + " differ in kind",
                                "both in minutes or both in repetitions");
            }
            for (var outside : range.outside(exercise.usual())) {
                one.file()
                        .wrong(
                                "dose",
                                "\"dose\" has " + outside.is() + " for "
                                        + outside.amount().field(),
                                outside.usual() + ", its usual range for ages " + range.ages());
            }
            if (exercise.kind() == Kind.STRENGTH
                    && range.days()
                            .filter(days -> days.most() > MOST_STRENGTH_DAYS)
                            .isPresent()) {
                one.file()
                        .wrong(
                                "usual",
                                "strength work is usual on more than " + MOST_STRENGTH_DAYS + " days a week",
                                "days that leave one to rest in between");
            }
        }
    }

    /** Somebody else moves the child in what is passive, and whoever stretches the child by hand does so passively. */
    private static void movedByHands(Read one) {
        var exercise = one.exercise();
        boolean passive = exercise.tags().stream().anyMatch(tag -> tag.equals(BY_FORCE) || tag.startsWith(PASSIVE));
        if (passive && !exercise.helper()) {
            one.file().wrong("tags", "a passive movement has no helper's hands", "helper: hands or two");
        }
        if (!passive && exercise.helper() && exercise.kind() == Kind.STRETCH) {
            one.file().wrong("tags", "a stretch by a helper's hands carries no passive tag", BY_FORCE);
        }
    }

    /** A rule of care that forbids a position must reach each exercise that goes through it. */
    private static void toldByTag(Read one) {
        one.exercise().traits().positions().stream()
                .flatMap(position -> Optional.ofNullable(TOLD_BY_TAG.get(position)).stream())
                .filter(tag -> !one.exercise().tags().contains(tag))
                .distinct()
                .forEach(tag -> one.file()
                        .wrong("tags", "its positions ask for the tag \"" + tag + "\"", "the tag, or other positions"));
        if (one.exercise().kind() == Kind.STRETCH) {
            one.exercise().traits().muscleGroups().stream()
                    .flatMap(group -> Optional.ofNullable(STRETCH_TOLD_BY_TAG.get(group.id())).stream())
                    .filter(tag -> !one.exercise().tags().contains(tag))
                    .forEach(tag -> one.file()
                            .wrong(
                                    "tags",
                                    "what it stretches asks for the tag \"" + tag + "\"",
                                    "the tag, or other groups"));
        }
    }

    private static void reading(Read one) {
        var exercise = one.exercise();
        var en = text(exercise, Language.EN);
        var es = text(exercise, Language.ES);
        var grade = ReadingLevel.english(en).fleschKincaidGrade();
        if (grade > HARDEST_GRADE) {
            one.file()
                    .wrong(
                            "steps",
                            String.format("the English text reads at grade %.1f", grade),
                            "grade " + HARDEST_GRADE + " or lower: shorter sentences, shorter words");
        }
        var ease = ReadingLevel.spanish(es).fernandezHuertaEase();
        if (ease < LEAST_EASE) {
            one.file()
                    .wrong(
                            "steps",
                            String.format("the Spanish text has a reading ease of %.0f", ease),
                            LEAST_EASE + " or more: shorter sentences, shorter words");
        }
    }

    private static String text(Exercise exercise, Language language) {
        return Stream.of(Stream.of(exercise.purpose()), exercise.steps().stream(), Stream.of(exercise.stop()))
                .flatMap(texts -> texts)
                .map(text -> text.in(language))
                .collect(Collectors.joining(" "));
    }

    private void links(Read one) {
        var exercise = one.exercise();
        link(one, "easier", exercise.easier(), Exercise::harder);
        link(one, "harder", exercise.harder(), Exercise::easier);
        if (above(exercise.id()).contains(exercise.id())) {
            one.file()
                    .wrong(
                            exercise.harder().isPresent() ? "harder" : "easier",
                            "by its links it is harder than itself",
                            "links that lead up one way");
        }
    }

    /** What is harder than another has something easier, and the other way round: whoever steps up can step down. */
    private void link(Read one, String key, Optional<String> target, Function<Exercise, Optional<String>> back) {
        if (target.isEmpty()) {
            return;
        }
        var id = target.get();
        var other = all.get(id);
        if (other == null || id.equals(one.exercise().id())) {
            one.file().wrong(key, "\"" + key + "\" is " + id, "another exercise's file name");
        } else if (back.apply(other.exercise()).isEmpty()) {
            var wayBack = key.equals("easier") ? "harder" : "easier";
            one.file()
                    .wrong(
                            key,
                            "\"" + key + "\" is " + id + ", which leads to nothing " + wayBack,
                            "\"" + wayBack + "\" in content/exercises/" + id + ".yaml");
        }
    }

    /** All that the links of both directions call harder. */
    private Set<String> above(String from) {
        var found = new LinkedHashSet<String>();
        var open = new ArrayDeque<>(Set.of(from));
        while (!open.isEmpty()) {
            var id = open.remove();
            all.values().stream()
                    .map(Read::exercise)
                    .filter(other -> other.easier().filter(id::equals).isPresent())
                    .map(Exercise::id)
                    .filter(found::add)
                    .forEach(open::add);
            Optional.ofNullable(all.get(id))
                    .flatMap(read -> read.exercise().harder())
                    .filter(all::containsKey)
                    .filter(found::add)
                    .ifPresent(open::add);
        }
        return found;
    }

    private void names() {
        for (var language : Language.values()) {
            var named = new HashMap<String, Read>();
            for (var one : all.values()) {
                var name = one.exercise().name().in(language);
                var other = named.putIfAbsent(name.toLowerCase(Locale.ROOT), one);
                if (other != null) {
                    nameTaken(one, name, other);
                    nameTaken(other, name, one);
                }
            }
        }
    }

    private static void nameTaken(Read one, String name, Read other) {
        one.file()
                .wrong(
                        "name",
                        "\"" + name + "\" is the name of " + other.exercise().id() + ", too",
                        "a name of its own");
    }
}
