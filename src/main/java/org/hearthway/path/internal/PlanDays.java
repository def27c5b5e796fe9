package org.hearthway.path.internal;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.Calendar;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The days that plans may use, asked for once a day and once for each edition of the calendar: every plan of the clinic
 * needs the same ones.
 */
@Component
class PlanDays {

    private static final int YEARS_BACK = 25;
    private static final int YEARS_AHEAD = 35;

    private final ClinicCalendar clinic;
    private final VisitKindNames visits;
    private final SeasonKind seasons;
    private volatile @Nullable Known known;

    private record Known(LocalDate today, long edition, Calendar calendar) {}

    PlanDays(ClinicCalendar clinic, VisitKindNames visits, SeasonKind seasons) {
        this.clinic = clinic;
        this.visits = visits;
        this.seasons = seasons;
    }

    /** The days as they are known today. */
    Calendar on(LocalDate today) {
        var last = known;
        var edition = clinic.edition();
        if (last != null && last.today().equals(today) && last.edition() == edition) {
            return last.calendar();
        }
        var calendar = calendar(today, clinic::isOpen);
        known = new Known(today, edition, calendar);
        return calendar;
    }

    /** The days as they would be if the clinic were open, or closed, on one of them. */
    Calendar with(LocalDate today, LocalDate day, boolean open) {
        return calendar(today, each -> each.equals(day) ? open : clinic.isOpen(each));
    }

    private Calendar calendar(LocalDate today, Predicate<LocalDate> isOpen) {
        var first = today.minusYears(YEARS_BACK);
        var last = today.plusYears(YEARS_AHEAD);
        var open = Days.where(first, last, isOpen);
        var kinds = new HashMap<String, Days>();
        for (var kind : visits.names()) {
            var weekdays = visits.weekdays(kind);
            if (!weekdays.isEmpty()) {
                kinds.put(kind, Days.where(first, last, day -> open.allow(day) && isOn(weekdays, day)));
            }
        }
        var weeks = new HashMap<String, Days>();
        seasons.all().forEach((id, season) -> weeks.put(id, Days.where(first, last, season::holds)));
        return new Calendar(open, Map.copyOf(kinds), Map.copyOf(weeks), new Span(first, last));
    }

    private static boolean isOn(Set<DayOfWeek> weekdays, LocalDate day) {
        return weekdays.contains(day.getDayOfWeek());
    }
}
