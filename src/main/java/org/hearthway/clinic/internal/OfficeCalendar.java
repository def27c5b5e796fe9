package org.hearthway.clinic.internal;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.stereotype.Component;

/** Open days from the office days of the settings, the holidays of the content and the days that the clinic closed. */
@Component
class OfficeCalendar implements ClinicCalendar {

    private static final int DAYS_TO_LOOK = 366;

    private final ClinicSettings settings;
    private final HolidayKind holidays;
    private final OwnDays own;
    private final Map<Integer, Map<LocalDate, Bilingual>> byYear = new ConcurrentHashMap<>();

    OfficeCalendar(ClinicSettings settings, HolidayKind holidays, OwnDays own) {
        this.settings = settings;
        this.holidays = holidays;
        this.own = own;
    }

    @Override
    public boolean isOpen(LocalDate day) {
        return settings.officeDays().contains(day.getDayOfWeek())
                && holiday(day).isEmpty();
    }

    @Override
    public Optional<Bilingual> holiday(LocalDate day) {
        return Optional.ofNullable(
                        byYear.computeIfAbsent(day.getYear(), this::holidaysOf).get(day))
                .or(() -> Optional.ofNullable(own.known().names().get(day)));
    }

    @Override
    public long edition() {
        return own.known().edition();
    }

    private Map<LocalDate, Bilingual> holidaysOf(int year) {
        var days = new ConcurrentHashMap<LocalDate, Bilingual>();
        // a day counted from Easter may lie in the neighbouring year, so both neighbours are asked too
        for (int asked = year - 1; asked <= year + 1; asked++) {
            for (var holiday : holidays.all()) {
                holiday.rule()
                        .in(asked)
                        .filter(day -> day.getYear() == year)
                        .ifPresent(day -> days.putIfAbsent(day, holiday.name()));
            }
        }
        return Map.copyOf(days);
    }

    @Override
    public LocalDate onOrAfter(LocalDate day) {
        return firstOpen(day, d -> d.plusDays(1));
    }

    @Override
    public LocalDate onOrBefore(LocalDate day) {
        return firstOpen(day, d -> d.minusDays(1));
    }

    private LocalDate firstOpen(LocalDate day, UnaryOperator<LocalDate> step) {
        return Stream.iterate(day, step)
                .limit(DAYS_TO_LOOK)
                .filter(this::isOpen)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the clinic has no open day within a year"));
    }
}
