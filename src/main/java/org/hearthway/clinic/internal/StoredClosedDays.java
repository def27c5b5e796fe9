package org.hearthway.clinic.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.clinic.ClosedDays;
import org.hearthway.clinic.events.ClosedDaySaid;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says on which days the clinic is closed. */
@Service
@Transactional
class StoredClosedDays implements ClosedDays {

    private final ClosedDayRows rows;
    private final ClinicCalendar calendar;
    private final ClinicSettings settings;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    StoredClosedDays(
            ClosedDayRows rows,
            ClinicCalendar calendar,
            ClinicSettings settings,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.calendar = calendar;
        this.settings = settings;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public List<ClosedDay> ahead(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return rows.closedFrom(today());
    }

    @Override
    public void close(Viewer viewer, LocalDate day, String english, String spanish) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var problems = new ArrayList<Problem>();
        wrong(day).ifPresent(problems::add);
        name("english", english.strip()).ifPresent(problems::add);
        name("spanish", spanish.strip()).ifPresent(problems::add);
        Invalid.ifAny(problems);
        say(
                viewer,
                day,
                new Bilingual(english.strip(), spanish.strip()),
                rows.version(day).orElse(0L),
                true);
    }

    private Optional<Problem> wrong(LocalDate day) {
        if (day.isBefore(today()) || day.isAfter(today().plusYears(YEARS_AHEAD))) {
            return Optional.of(Problem.at("day", "clinic.closed.bounds", YEARS_AHEAD));
        }
        return calendar.isOpen(day) ? Optional.empty() : Optional.of(Problem.at("day", "clinic.closed.already", day));
    }

    private static Optional<Problem> name(String field, String name) {
        return name.isEmpty() || name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)
                ? Optional.of(Problem.at(field, "clinic.closed.name", LONGEST_NAME, name.length()))
                : Optional.empty();
    }

    @Override
    public void open(Viewer viewer, LocalDate day, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var closed = rows.closedFrom(today()).stream()
                .filter(known -> known.day().equals(day) && known.version() == seen)
                .findFirst()
                .orElseThrow(Overtaken::new);
        say(viewer, day, closed.name(), seen, false);
    }

    private void say(Viewer viewer, LocalDate day, Bilingual name, long seen, boolean closed) {
        try {
            rows.say(new ClosedDay(day, name, account(viewer), clock.instant(), seen + 1), closed);
        } catch (DuplicateKeyException saidAtTheSameMoment) {
            throw new Overtaken();
        }
        events.publishEvent(new ClosedDaySaid(viewer, day, closed));
    }

    private static AccountId account(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }
}
