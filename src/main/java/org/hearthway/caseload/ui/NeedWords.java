package org.hearthway.caseload.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.TaskWords;
import org.hearthway.task.Tasks;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Puts an item into words: what, the particulars, by when, and the next step. */
@Component
class NeedWords {

    private static final int QUOTE_LENGTH = 180;

    private final Words words;
    private final Signs signs;
    private final HomeWeek homeWeek;
    private final ExerciseLibrary library;
    private final Pumps pumps;
    private final Visits visits;
    private final Tasks tasks;
    private final TaskWords taskWords;
    private final SecondCheckWords secondChecks;
    private final PathNeedWords paths;
    private final HomeNeedWords home;
    private final ZoneId zone;

    NeedWords(
            Words words,
            Signs signs,
            HomeWeek homeWeek,
            ExerciseLibrary library,
            Pumps pumps,
            Visits visits,
            Tasks tasks,
            TaskWords taskWords,
            SecondCheckWords secondChecks,
            PathNeedWords paths,
            HomeNeedWords home,
            ClinicSettings settings) {
        this.words = words;
        this.signs = signs;
        this.homeWeek = homeWeek;
        this.library = library;
        this.pumps = pumps;
        this.visits = visits;
        this.tasks = tasks;
        this.taskWords = taskWords;
        this.secondChecks = secondChecks;
        this.paths = paths;
        this.home = home;
        this.zone = settings.zone();
    }

    /** What it is, and the line below it. */
    record Why(String title, String rest, String below) {}

    Why why(Viewer.Person viewer, Item item, LocalDate today) {
        var language = viewer.language();
        return switch (item.cause().rule()) {
            case SIGN -> report(viewer, item, today);
            case PAIN -> pain(viewer, item);
            case REFILL -> refill(viewer, item, today);
            case PUMP_CONCERN -> {
                var kind = item.cause()
                        .subject()
                        .substring(0, item.cause().subject().indexOf('/'));
                yield new Why(
                        words.say(
                                language,
                                "caseload.pump." + kind,
                                words.dateWithYear(language, item.cause().day())),
                        "",
                        words.say(language, "caseload.pump.below." + kind));
            }
            case FIRST_FILL ->
                new Why(
                        words.say(
                                language,
                                "caseload.first-fill",
                                words.dateWithYear(language, item.cause().day())),
                        "",
                        words.say(language, "caseload.first-fill.below"));
            case DEVICE_BEHIND -> paths.device(viewer, item, today);
            case SECOND_CHECK -> secondChecks.why(viewer, item);
            case CHECK -> check(language, item, today);
            case GENERATOR -> generator(language, item, today);
            case DEVICE_WARNING ->
                new Why(
                        words.say(
                                language,
                                "caseload.warning." + item.cause().subject(),
                                item.cause().count()),
                        words.dateWithYear(language, item.cause().day()),
                        words.say(language, "caseload.warning.below"));
            case MISSED -> missed(language, item);
            case TASK -> task(viewer, item, today);
            case STAGE_WAITS, STAGE_NO_DAY, STAGE_LATE, STAGE_VISIT -> paths.why(viewer, item, today);
            case PAIN_RISING -> home.rising(language, item.cause());
            case PAIN_OFTEN -> home.often(language, item.cause(), "caseload.sore");
            case TOO_HARD -> home.often(language, item.cause(), "caseload.hard");
            case STOPPED -> home.stopped(language, item.cause());
            case FEW_DONE -> home.few(language, item.cause());
            case MORE -> home.more(viewer, item);
            case CARE_TURN -> home.turned(viewer, item);
            case NO_LOG ->
                new Why(
                        words.say(language, "caseload.no-log", item.cause().count()),
                        "",
                        words.say(
                                language, "caseload.no-log.first", item.cause().day()));
        };
    }

    private Why report(Viewer.Person viewer, Item item, LocalDate today) {
        var language = viewer.language();
        var key = UUID.fromString(item.cause().subject());
        var report = signs.of(viewer, item.child()).stream()
                .filter(r -> r.key().equals(key))
                .findFirst();
        var when = moment(language, item.since(), today);
        if (report.isEmpty()) {
            return new Why(words.say(language, "caseload.sign", when), "", "");
        }
        var told = report.get();
        if (told.signs().isEmpty()) {
            return new Why(
                    words.say(language, "caseload.note", when), quoted(language, told.note()), by(language, told.by()));
        }
        var says = told.signs().stream()
                .map(Sign::says)
                .map(sign -> sign.in(language))
                .reduce((one, other) -> one + " · " + other)
                .orElse("");
        var called = words.say(language, told.called() ? "caseload.sign.called" : "caseload.sign.not-called");
        var note = told.note().isBlank() ? "" : " " + quoted(language, told.note());
        return new Why(words.say(language, "caseload.sign", when), says, called + note);
    }

    private String by(Language language, String name) {
        return words.say(language, "caseload.note.by", name);
    }

    private Why pain(Viewer.Person viewer, Item item) {
        var language = viewer.language();
        var cause = item.cause();
        var name = library.find(cause.subject()).map(Exercise::name).orElse(Bilingual.same(cause.subject()));
        var title = words.say(language, "caseload.pain", cause.count(), name);
        var rest = words.date(language, cause.day());
        var entry = homeWeek.entries(viewer, item.child(), cause.day(), cause.day()).stream()
                .filter(logged -> cause.key().endsWith(logged.entry().key().toString()))
                .findFirst();
        if (entry.isEmpty()) {
            return new Why(title, rest, words.say(language, "caseload.pain.changed"));
        }
        var rated = entry.get()
                .entry()
                .ratedBy()
                .map(who -> words.say(language, "caseload.pain.rated." + who.name()) + " ")
                .orElse("");
        var note = entry.get().entry().note();
        return new Why(title, rest, rated + (note.isBlank() ? "" : quoted(language, note)));
    }

    private Why missed(Language language, Item item) {
        var kind = visits.kinds().stream()
                .filter(known -> known.id().equals(item.cause().subject()))
                .map(VisitKind::name)
                .findFirst()
                .orElse(Bilingual.same(item.cause().subject()));
        return new Why(
                words.say(language, "caseload.missed", item.cause().count(), kind),
                "",
                words.say(language, "caseload.missed.last", item.cause().day()));
    }

    private Why refill(Viewer.Person viewer, Item item, LocalDate today) {
        var language = viewer.language();
        var days = ChronoUnit.DAYS.between(today, item.cause().day());
        var title = days < 0
                ? words.say(language, "caseload.refill.late", -days)
                : words.say(language, "caseload.refill", days);
        var below = pumps.refill(viewer, item.child())
                .flatMap(Refill::window)
                .map(by -> by.alarm()
                        .map(alarm -> words.say(
                                language,
                                by.lifeDecides() ? "caseload.refill.life" : "caseload.refill.alarm",
                                by.day(),
                                alarm))
                        .orElseGet(() -> words.say(language, "caseload.refill.life-alone", by.day())))
                .orElse("");
        return new Why(title, "", below);
    }

    private Why task(Viewer.Person viewer, Item item, LocalDate today) {
        var language = viewer.language();
        var days = ChronoUnit.DAYS.between(item.cause().day(), today);
        var title = words.say(language, "caseload.task", days);
        return task(viewer, item)
                .map(task -> new Why(
                        title,
                        quoted(language, task.says().in(language)),
                        words.say(
                                language,
                                "caseload.task.of",
                                taskWords.to(viewer, task.to()),
                                task.wantedBy(),
                                taskWords.name(viewer, task.givenBy()))))
                .orElseGet(() -> new Why(title, "", ""));
    }

    private Optional<Task> task(Viewer.Person viewer, Item item) {
        return tasks.of(viewer, item.child()).stream()
                .filter(task -> task.id().toString().equals(item.cause().subject()))
                .findFirst();
    }

    /** Who takes it up when nobody has: the role that the task or the path itself names, or that of the rule. */
    String usual(Viewer.Person viewer, Item item, Role role) {
        if (item.cause().rule().isOfPath()) {
            return paths.responsible(viewer, item).orElseGet(() -> role(viewer, role));
        }
        return task(viewer, item)
                .filter(task -> item.cause().rule() == Rule.TASK && task.to() instanceof Assignee.AnyOf)
                .map(task -> taskWords.to(viewer, task.to()))
                .orElseGet(() -> role(viewer, role));
    }

    private String role(Viewer.Person viewer, Role role) {
        return words.say(viewer.language(), "caseload.role." + role);
    }

    private Why check(Language language, Item item, LocalDate today) {
        var day = words.dateWithYear(language, item.cause().day());
        var what = words.say(language, "caseload.check." + item.cause().subject());
        var late = item.cause().day().isBefore(today);
        return new Why(
                words.say(language, late ? "caseload.check.late" : "caseload.check", what, day),
                "",
                words.say(language, "caseload.check.to-confirm"));
    }

    private Why generator(Language language, Item item, LocalDate today) {
        var parts = item.cause().subject().split("/", 2);
        var late = item.cause().day().isBefore(today) ? ".late" : "";
        return new Why(
                words.say(
                        language,
                        "caseload.generator." + parts[0] + late,
                        words.dateWithYear(language, item.cause().day())),
                "",
                words.say(language, "caseload.generator.below", parts[1]));
    }

    private String quoted(Language language, String text) {
        var line = text.strip().replaceAll("\\s+", " ");
        var cut = line.length() > QUOTE_LENGTH ? line.substring(0, QUOTE_LENGTH).strip() + "…" : line;
        return words.say(language, "caseload.quote", cut);
    }

    /** The first line of "by when": a moment, today, or a day. */
    String due(Language language, Item item, Instant now, LocalDate today) {
        var cause = item.cause();
        var late = cause.dueAt().map(now::isAfter).orElse(cause.dueDay().isBefore(today));
        var when = cause.dueAt()
                .map(at -> moment(language, at, today))
                .orElseGet(() -> cause.dueDay().equals(today)
                        ? words.say(language, "caseload.today")
                        : words.date(language, cause.dueDay()));
        return late && item.seen().isEmpty() ? words.say(language, "caseload.late", when) : when;
    }

    /** A time of today, or a day with its time. */
    String moment(Language language, Instant at, LocalDate today) {
        var local = at.atZone(zone);
        var time = words.time(language, local.toLocalTime()) + whichOfTwo(language, local);
        return local.toLocalDate().equals(today)
                ? time
                : words.say(language, "caseload.day-time", local.toLocalDate(), time);
    }

    /** In the night on which an hour comes twice the clock alone does not say which of the two it is. */
    private String whichOfTwo(Language language, ZonedDateTime local) {
        return zone.getRules().getValidOffsets(local.toLocalDateTime()).size() < 2
                ? ""
                : " " + DateTimeFormatter.ofPattern("zzz", language.locale()).format(local);
    }

    /** Who has looked, and until when and why it is set aside; empty when nothing was done yet. */
    Optional<String> standing(Language language, Item item, LocalDate today) {
        var aside = item.aside().map(a -> words.say(language, "caseload.aside.until", a.until(), a.reason()));
        var seen = item.seen()
                .map(s -> words.say(language, "caseload.seen.by", s.by().name(), moment(language, s.at(), today)));
        var both = Stream.of(seen, aside).flatMap(Optional::stream).collect(Collectors.joining(" "));
        return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }

    /** How it left the list. */
    String left(Language language, Item item, LocalDate today) {
        return item.left()
                .map(left -> {
                    var when = moment(language, left.at(), today);
                    var outcome = left.outcome()
                            .map(o -> words.say(language, "caseload.outcome." + o.name()))
                            .orElse("");
                    return left.gone()
                            .map(gone -> words.say(
                                    language,
                                    "caseload.left.gone",
                                    when,
                                    words.say(language, "caseload.gone." + gone.name())))
                            .orElseGet(() -> words.say(
                                    language,
                                    "caseload.left.closed",
                                    left.by().map(by -> by.name()).orElse(""),
                                    when,
                                    outcome,
                                    left.words()));
                })
                .orElse("");
    }
}
