package org.hearthway.visit.internal;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.visit.Visits.Booking;
import org.springframework.stereotype.Component;

/** What may be booked: the bounds, each named in the answer. */
@Component
class BookingRules {

    static final int SHORTEST = 5;
    static final int LONGEST = 480;
    static final int PLACE_LENGTH = 200;
    static final int PURPOSE_LENGTH = 120;
    static final int WISH_LENGTH = 500;
    static final int YEARS_AHEAD = 5;

    private final VisitKinds kinds;
    private final ClinicCalendar calendar;
    private final ClinicSettings clinic;
    private final Clock clock;

    BookingRules(VisitKinds kinds, ClinicCalendar calendar, ClinicSettings clinic, Clock clock) {
        this.kinds = kinds;
        this.calendar = calendar;
        this.clinic = clinic;
        this.clock = clock;
    }

    void check(Booking booking) {
        var problems = new ArrayList<Problem>();
        if (kinds.find(booking.kind()).isEmpty()) {
            problems.add(Problem.at("kind", "visit.problem.kind"));
        }
        start(booking.start()).ifPresent(problems::add);
        if (booking.minutes() < SHORTEST || booking.minutes() > LONGEST) {
            problems.add(Problem.at("minutes", "visit.problem.minutes", SHORTEST, LONGEST));
        }
        length("place", booking.place(), PLACE_LENGTH).ifPresent(problems::add);
        length("purpose", booking.purpose().orElse(""), PURPOSE_LENGTH).ifPresent(problems::add);
        Invalid.ifAny(problems);
    }

    void checkStart(LocalDateTime start) {
        Invalid.ifAny(start(start).map(List::of).orElse(List.of()));
    }

    void checkWish(String wish) {
        Invalid.ifAny(length("wish", wish, WISH_LENGTH).map(List::of).orElse(List.of()));
    }

    private Optional<Problem> start(LocalDateTime start) {
        var now = LocalDateTime.ofInstant(clock.instant(), clinic.zone());
        var day = start.toLocalDate();
        if (start.isBefore(now)) {
            return Optional.of(Problem.at("start", "visit.problem.past", now.toLocalDate(), now.toLocalTime()));
        }
        if (day.isAfter(now.toLocalDate().plusYears(YEARS_AHEAD))) {
            return Optional.of(Problem.at("start", "visit.problem.far", YEARS_AHEAD));
        }
        if (calendar.isOpen(day)) {
            return Optional.empty();
        }
        var next = calendar.onOrAfter(day);
        return Optional.of(calendar.holiday(day)
                .map(name -> Problem.at("start", "visit.problem.holiday", day, name, next))
                .orElseGet(() -> Problem.at("start", "visit.problem.closed", day, next)));
    }

    private static Optional<Problem> length(String field, String text, int longest) {
        return text.length() > longest
                ? Optional.of(Problem.at(field, "visit.problem." + field, longest, text.length()))
                : Optional.empty();
    }

    /** Wall time at the clinic, cut to the minute: what a booking is made of. */
    static LocalDateTime toTheMinute(LocalDateTime start) {
        return start.toLocalDate().atTime(LocalTime.of(start.getHour(), start.getMinute()));
    }
}
