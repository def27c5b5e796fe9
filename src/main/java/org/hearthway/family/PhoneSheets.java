package org.hearthway.family;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hearthway.base.NotAvailable;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Makes what a phone takes along for the time without a signal. */
@Component
class PhoneSheets {

    /** Yesterday, today and the week ahead. */
    static final int DAYS = 9;

    /** So long a plan may be gone by without a signal: a therapist may have changed it since. Common practice, no source. */
    static final Duration GOOD_FOR = Duration.ofDays(7);

    private static final int BANDS = 4;

    private final HomeWeek week;
    private final ExerciseLibrary library;
    private final FamilyPlans plans;
    private final CallLines lines;
    private final Signs signs;
    private final Pause pauses;

    PhoneSheets(HomeWeek week, ExerciseLibrary library, FamilyPlans plans, CallLines lines, Signs signs, Pause pauses) {
        this.week = week;
        this.library = library;
        this.plans = plans;
        this.lines = lines;
        this.signs = signs;
        this.pauses = pauses;
    }

    /**
     * The sheet of one person for one child.
     *
     * @throws NotAvailable when the person may not see the child's week
     */
    @Transactional(readOnly = true)
    public PhoneSheet of(Reader reader, PhoneSheet.Token token) {
        var carried = week.carry(reader.viewer(), reader.id(), reader.today().minusDays(1), DAYS);
        var exercises = new LinkedHashMap<String, PhoneSheet.Lesson>();
        carried.days().stream()
                .flatMap(day -> day.planned().stream())
                .map(Planned::exercise)
                .forEach(exercise -> exercises.computeIfAbsent(exercise.id(), id -> lesson(reader, exercise)));
        return new PhoneSheet(
                reader.viewer().account().toString(),
                new PhoneSheet.Kid(
                        reader.id().toString(), reader.name(), reader.child().skinTone()),
                "/" + reader.address("today"),
                reader.language().tag(),
                reader.viewer().zone().getId(),
                reader.instant().toEpochMilli(),
                reader.instant().plus(GOOD_FOR).toEpochMilli(),
                carried.version(),
                reader.isHelper(),
                reader.isHelper() ? null : pauses.words(reader).orElse(null),
                token,
                PhoneWords.single(reader),
                PhoneWords.counted(reader, GOOD_FOR),
                Map.of("pain", pieces(Faces::painPieces), "effort", pieces(Faces::effortPieces)),
                lines.lines().stream().map(line -> call(reader, line)).toList(),
                signs(reader),
                exercises,
                carried.days().stream()
                        .map(day -> day(reader, day, carried.forbiddenFrom()))
                        .toList());
    }

    private static List<List<Faces.Piece>> pieces(IntFunction<List<Faces.Piece>> picture) {
        return IntStream.range(0, BANDS).mapToObj(picture).toList();
    }

    private static PhoneSheet.Call call(Reader reader, CallLines.Line line) {
        var style = CallRows.style(line.urgency());
        return new PhoneSheet.Call(
                style,
                style,
                reader.text(line.title()),
                reader.large(reader.text(line.detail())),
                reader.text(line.call()),
                line.number(),
                line.link());
    }

    /** Those of the child's own path, and to a helper, who is told nothing of that, those of every child at exercise. */
    private List<PhoneSheet.Sign> signs(Reader reader) {
        var topics = reader.isHelper()
                ? Set.of(Sign.Topic.ANY_CHILD, Sign.Topic.REHAB)
                : signs.topics(reader.viewer(), reader.id());
        return signs.all().stream()
                .filter(sign -> topics.contains(sign.topic()) && sign.urgency() != Sign.Urgency.HOURS)
                .sorted(Comparator.comparing(Sign::urgency))
                .map(sign -> new PhoneSheet.Sign(CallRows.style(sign.urgency()), reader.text(sign.says())))
                .toList();
    }

    private static PhoneSheet.Lesson lesson(Reader reader, Exercise exercise) {
        return new PhoneSheet.Lesson(
                reader.text(exercise.name()),
                reader.text(exercise.purpose()),
                exercise.steps().stream().map(reader::text).toList(),
                reader.text(exercise.stop()));
    }

    private PhoneSheet.Day day(Reader reader, HomeWeek.Day day, Map<String, LocalDate> forbiddenFrom) {
        var minutes = day.planned().stream().mapToInt(Planned::minutes).sum();
        return new PhoneSheet.Day(
                day.date(),
                reader.large(reader.words().longDate(reader.language(), day.date())),
                reader.say("family.session.lead", day.planned().size(), minutes),
                day.planned().stream()
                        .map(planned -> item(
                                reader,
                                planned,
                                day.date(),
                                Optional.ofNullable(
                                        forbiddenFrom.get(planned.exercise().id()))))
                        .toList());
    }

    private PhoneSheet.Item item(Reader reader, Planned planned, LocalDate day, Optional<LocalDate> notFrom) {
        var line = planned.line();
        var later = notFrom.filter(day::isBefore);
        return new PhoneSheet.Item(
                planned.exercise().id(),
                DoseWords.cells(reader, line),
                says(reader, planned),
                planned.minutes(),
                line.note(),
                side(reader, line),
                picture(reader, planned),
                timer(reader, line),
                cautions(reader, planned, day),
                later.orElse(null),
                later.map(first -> reader.say("family.session.not-from", first)).orElse(null),
                planned.logged().map(logged -> past(reader, logged)).orElse(null));
    }

    /** The dose in one line, after the times of the day where the family has times. */
    private static String says(Reader reader, Planned planned) {
        var dose = DoseWords.said(reader, planned.line(), planned.minutes());
        if (planned.times().isEmpty()) {
            return dose;
        }
        var times = planned.times().stream()
                .map(time -> reader.words().time(reader.language(), time))
                .toList();
        return reader.list(times) + " · " + dose;
    }

    private static PhoneSheet.@org.jspecify.annotations.Nullable Shown side(Reader reader, ProgramLine line) {
        if (line.side() == ProgramLine.Side.NONE) {
            return null;
        }
        var side = "family.exercise.side." + line.side();
        return new PhoneSheet.Shown(reader.say(side + ".letter"), reader.say(side));
    }

    private static PhoneSheet.Picture picture(Reader reader, Planned planned) {
        var figure = planned.exercise().figure();
        var left = Side.isLeft(planned.line());
        return new PhoneSheet.Picture(
                "/" + Pictures.startAddress(reader, planned.exercise(), left),
                "/" + Pictures.endAddress(reader, planned.exercise(), left),
                "/" + Pictures.moving(reader, planned.exercise(), left),
                figure.ratio(),
                figure.words(reader.language(), left));
    }

    private PhoneSheet.Timer timer(Reader reader, ProgramLine line) {
        var dose = line.dose();
        var rest = line.prescription().restSeconds().orElse(library.pace().restSeconds());
        var sides = HoldRing.sides(reader, line);
        if (dose.minutes() > 0) {
            return new PhoneSheet.Timer("hold", dose.minutes() * 60, 1, dose.sets(), rest, sides);
        }
        return new PhoneSheet.Timer(
                dose.holdSeconds() > 0 ? "hold" : "count",
                dose.holdSeconds(),
                dose.repetitions(),
                dose.sets(),
                rest,
                sides);
    }

    private List<PhoneSheet.Shown> cautions(Reader reader, Planned planned, LocalDate day) {
        if (reader.isHelper()) {
            return List.of();
        }
        return plans.precautions(reader, day).stream()
                .filter(care -> planned.exercise().tags().contains(care.rule().tag()))
                .map(care -> new PhoneSheet.Shown(
                        reader.say("family.exercise.until", reader.monthDay(care.until())),
                        reader.text(care.rule().says())))
                .toList();
    }

    private static PhoneSheet.Past past(Reader reader, Logged logged) {
        var entry = logged.entry();
        return new PhoneSheet.Past(
                entry.outcome().name(),
                DayWords.said(reader, logged),
                entry.pain().filter(pain -> pain >= SessionLogged.SEVERE_PAIN).isPresent(),
                logged.turn());
    }
}
