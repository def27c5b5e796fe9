package org.hearthway.desk.ui;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.desk.Board;
import org.hearthway.desk.Board.Row;
import org.hearthway.desk.Board.Wanted;
import org.hearthway.parts.Icon;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Puts the desk's rows into words; a message's time is told by the family's own clock. */
@Component
class DeskWords {

    private final Words words;
    private final Visits visits;
    private final ZoneId zone;
    private final Clock clock;

    DeskWords(Words words, Visits visits, ClinicSettings settings, Clock clock) {
        this.words = words;
        this.visits = visits;
        this.zone = settings.zone();
        this.clock = clock;
    }

    /** What it is about: the kind of visit, or the message's own matter. */
    String about(Language language, Row row) {
        return row.visit()
                .map(visit -> visit.kind().name().in(language))
                .or(() -> row.wanted().map(wanted -> kind(language, wanted)))
                .or(() -> row.message().map(Message::about).filter(about -> !about.isBlank()))
                .or(() -> row.message().map(Message::subject))
                .orElse("");
    }

    String kind(Language language, Wanted wanted) {
        return visits.kinds().stream()
                .filter(kind -> kind.id().equals(wanted.kind()))
                .map(VisitKind::name)
                .map(name -> name.in(language))
                .findFirst()
                .orElse(wanted.kind());
    }

    /** When the visit is, by the clinic's clock; or between which days it is to be. */
    String visit(Language language, Row row) {
        if (row.says() == Board.Case.REFILL_CHECKED) {
            return row.wanted()
                    .map(wanted -> words.say(language, "desk.refilled", day(language, wanted.from())))
                    .orElse("");
        }
        var window = row.wanted()
                .map(wanted -> wanted.from().equals(wanted.until())
                        ? words.say(language, "desk.on", day(language, wanted.until()))
                        : words.say(
                                language, "desk.between", day(language, wanted.from()), day(language, wanted.until())));
        var time = row.visit().map(visit -> start(language, visit));
        if (window.isPresent() && time.isPresent()) {
            return words.say(language, "desk.outside", time.get(), window.get());
        }
        return window.or(() -> time).orElseGet(() -> words.say(language, "desk.no-visit"));
    }

    /** A day of this year by its weekday, any other with its year. */
    private String day(Language language, LocalDate day) {
        return day.getYear() == today().getYear() ? words.date(language, day) : words.dateWithYear(language, day);
    }

    String start(Language language, Visit visit) {
        return words.say(
                language,
                "desk.day-time",
                day(language, visit.start().toLocalDate()),
                visit.start().toLocalTime());
    }

    Icon icon(Row row) {
        return switch (row.says()) {
            case PLANNED, HELD, SENDING, RETRYING, ASKED, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER ->
                row.message()
                                .filter(message -> message.channel() == Outbox.Channel.CALL)
                                .isPresent()
                        ? Icon.PHONE
                        : Icon.MAIL;
            case CALLED, TO_CALL, FAILED, NOBODY_ASKED -> Icon.PHONE;
            case ASKED_TO_MOVE, DISAGREED, CLOSED_DAY -> Icon.MOVE;
            case OVER -> Icon.HOURS;
            case NOT_BOOKED, OUTSIDE_WINDOW -> Icon.DATES;
            case REFILL_CHECKED -> Icon.REFILL;
        };
    }

    /** By which channel and in which language, and how that stands. */
    String how(Language language, Row row) {
        var channel = row.message().map(message -> channel(language, message)).orElse("");
        return switch (row.says()) {
            case PLANNED, ASKED -> channel;
            case FAILED ->
                words.say(
                        language,
                        row.message()
                                        .filter(message -> message.channel() == Outbox.Channel.CALL)
                                        .isPresent()
                                ? "desk.how.MISSED"
                                : "desk.how.FAILED",
                        channel);
            case HELD, SENDING, RETRYING, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER, CALLED, TO_CALL ->
                words.say(language, "desk.how." + row.says().name(), channel);
            case ASKED_TO_MOVE ->
                row.visit()
                        .map(Visit::wish)
                        .filter(wish -> !wish.isBlank())
                        .map(wish -> words.say(language, "desk.how.wish", wish))
                        .orElseGet(() -> words.say(language, "desk.how.no-wish"));
            case OVER, NOBODY_ASKED, DISAGREED, CLOSED_DAY, REFILL_CHECKED ->
                words.say(language, "desk.how." + row.says().name());
            case NOT_BOOKED, OUTSIDE_WINDOW ->
                row.wanted()
                        .flatMap(wanted -> visits.kinds().stream()
                                .filter(kind -> kind.id().equals(wanted.kind()))
                                .findFirst()
                                .map(kind -> words.say(
                                        language,
                                        wanted.isToBeConfirmed() ? "desk.how.to-confirm" : "desk.how.to-book",
                                        kind.with(),
                                        kind.minutes())))
                        .orElse("");
        };
    }

    String channel(Language language, Message message) {
        return words.say(
                language,
                "desk.channel." + message.channel().name(),
                words.say(language, "desk.language." + message.language().name()));
    }

    /** When it leaves or left, how long it waits, or how many days are left to book. */
    String when(Language language, Row row) {
        return switch (row.says()) {
            case HELD -> words.say(language, "desk.when.held");
            case PLANNED, SENDING, RETRYING ->
                row.message().map(message -> due(language, message)).orElse("");
            case ASKED, MAY_HAVE_GONE_TWICE, WRITTEN_TO_FOLDER, CALLED ->
                row.message()
                        .map(message -> words.say(
                                language,
                                "desk.when.asked",
                                since(message.due()),
                                local(message).toLocalDate()))
                        .orElse("");
            case TO_CALL, FAILED ->
                row.message()
                        .map(message -> words.say(language, "desk.when.tries", since(message.due()), message.tries()))
                        .orElse("");
            case ASKED_TO_MOVE, DISAGREED, NOBODY_ASKED, CLOSED_DAY ->
                row.visit()
                        .map(visit -> words.say(
                                language,
                                "desk.when.in-days",
                                until(visit.start().toLocalDate())))
                        .orElse("");
            case OVER, REFILL_CHECKED -> "";
            case NOT_BOOKED, OUTSIDE_WINDOW ->
                row.wanted()
                        .map(wanted -> latest(language, wanted)
                                + wanted.alarm()
                                        .map(alarm -> " · " + alarm(language, alarm))
                                        .orElse(""))
                        .orElse("");
        };
    }

    private String latest(Language language, Wanted wanted) {
        var days = until(wanted.until());
        return days < 0
                ? words.say(language, "desk.when.too-late", -days)
                : words.say(language, "desk.when.latest", days);
    }

    private String alarm(Language language, LocalDate alarm) {
        var days = until(alarm);
        return days < 0
                ? words.say(language, "desk.when.alarm-past", -days)
                : words.say(language, "desk.when.alarm", days);
    }

    private long since(Instant at) {
        return ChronoUnit.DAYS.between(LocalDate.ofInstant(at, zone), today());
    }

    private long until(LocalDate day) {
        return ChronoUnit.DAYS.between(today(), day);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    private static java.time.ZonedDateTime local(Message message) {
        return message.due().atZone(message.zone());
    }

    /** A moment by the clinic's clock. */
    String moment(Language language, Instant at) {
        var local = at.atZone(zone);
        return words.say(language, "desk.day-time", day(language, local.toLocalDate()), local.toLocalTime());
    }

    /** The moment by the family's clock; the zone is named where it differs from the clinic's. */
    String due(Language language, Message message) {
        var local = local(message);
        var days = ChronoUnit.DAYS.between(LocalDate.ofInstant(clock.instant(), message.zone()), local.toLocalDate());
        var time = words.time(language, local.toLocalTime());
        var when = days == 0
                ? words.say(language, "desk.today-time", time)
                : days == 1
                        ? words.say(language, "desk.tomorrow-time", time)
                        : words.say(language, "desk.day-time", local.toLocalDate(), time);
        var same = local.getOffset().equals(message.due().atZone(zone).getOffset());
        return same ? when : words.say(language, "desk.their-zone", when, words.zone(language, message.zone()));
    }
}
