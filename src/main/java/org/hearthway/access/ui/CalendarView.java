package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Invalid;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.clinic.ClosedDays;
import org.hearthway.clinic.ClosedDays.ClosedDay;
import org.hearthway.parts.ClosedDayPreview;
import org.hearthway.parts.DayField;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** The office days of the next year on which the clinic is closed; one more can be closed, and opened again. */
@Route("staff/clinic/calendar")
@RolesAllowed("ADMINISTRATOR")
class CalendarView extends ClinicPage {

    private final transient ClosedDays closed;
    private final transient ClinicCalendar calendar;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient ClosedDayPreview preview;

    CalendarView(
            ClosedDays closed,
            ClinicCalendar calendar,
            ClinicSettings clinic,
            Clock clock,
            ClosedDayPreview preview,
            Words words,
            SignedIn signedIn) {
        super("calendar", words, signedIn);
        this.closed = closed;
        this.calendar = calendar;
        this.clinic = clinic;
        this.clock = clock;
        this.preview = preview;
        draw();
    }

    private void draw() {
        main.removeAll();
        side.removeAll();
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        var own = closed.ahead(viewer()).stream().collect(Collectors.toMap(ClosedDay::day, Function.identity()));
        var table = table(say("access.clinic.calendar"), "access.calendar.", "day", "name", "rule");
        var last = own.keySet().stream().reduce(today.plusYears(1), (one, other) -> one.isAfter(other) ? one : other);
        today.datesUntil(last.plusDays(1))
                .filter(day -> clinic.officeDays().contains(day.getDayOfWeek()))
                .forEach(day -> calendar.holiday(day)
                        .ifPresent(name -> table.getBody().add(row(day, name, Optional.ofNullable(own.get(day))))));
        main.add(table);
        side.add(form(today));
    }

    private NativeTableRow row(LocalDate day, Bilingual name, Optional<ClosedDay> own) {
        return new NativeTableRow(
                cell(Tags.span("hw-num", words.dateWithYear(language, day))),
                cell(name.in(language)),
                own.map(this::open).orElseGet(() -> cell(say("access.calendar.each-year"))));
    }

    private NativeTableCell open(ClosedDay day) {
        var open = Tags.button("plain", say("access.calendar.open"), pressed -> {
            side.removeAll();
            var form = opening(day);
            side.add(form);
            form.scrollIntoView();
        });
        open.setAriaLabel(say("access.calendar.open-day", day.day()));
        return cell(open);
    }

    private Component opening(ClosedDay day) {
        return Tags.div(
                "hw-sheet hw-side-form u-preview",
                Tags.h2("", say("access.calendar.open-day", day.day())),
                preview.opening(viewer(), day.day()),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say("access.calendar.leave"), pressed -> draw()),
                        Tags.button("main", say("access.calendar.open-this"), pressed -> {
                            attempt(() -> {
                                closed.open(viewer(), day.day(), day.version());
                                Told.done(say("access.calendar.opened", day.day()));
                            });
                            draw();
                        })));
    }

    private Component form(LocalDate today) {
        var day = new DayField(say("access.calendar.day"), words, language);
        day.setMin(today);
        day.setMax(today.plusYears(ClosedDays.YEARS_AHEAD));
        var english = name("access.calendar.english");
        var spanish = name("access.calendar.spanish");
        Map<String, HasValidation> fields = Map.of("day", day, "english", english, "spanish", spanish);
        var save = Tags.button(
                "main",
                say("access.calendar.close"),
                pressed -> attempt(() -> {
                    try {
                        // an empty field lies out of bounds, which says what is asked for
                        var chosen = Optional.ofNullable(day.getValue()).orElse(today.minusDays(1));
                        closed.close(viewer(), chosen, english.getValue(), spanish.getValue());
                        Told.done(say("access.calendar.closed", chosen));
                        draw();
                    } catch (Invalid invalid) {
                        Told.problems(invalid.problems(), fields, words, language);
                    }
                }));
        save.setId("close-day");
        var moves = new Div();
        day.addValueChangeListener(change -> {
            moves.removeAll();
            Optional.ofNullable(change.getValue())
                    .filter(chosen -> mayClose(chosen, today))
                    .ifPresent(chosen -> moves.add(preview.closing(viewer(), chosen)));
        });
        return Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.calendar.title")),
                day,
                moves,
                english,
                spanish,
                save,
                Tags.p("hw-quiet hw-s", say("access.calendar.note")));
    }

    /** Of any other day saving says what is wrong with it. */
    private boolean mayClose(LocalDate day, LocalDate today) {
        return !day.isBefore(today) && !day.isAfter(today.plusYears(ClosedDays.YEARS_AHEAD)) && calendar.isOpen(day);
    }

    private TextField name(String label) {
        var field = new TextField(say(label));
        field.setMaxLength(ClosedDays.LONGEST_NAME);
        field.setManualValidation(true);
        return field;
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }
}
