package org.hearthway.desk.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits.Booking;
import org.hearthway.words.Words;

/** The form that books a visit, and the shorter one that moves it. What was typed stays when it is refused. */
final class VisitForm {

    private static final int PLACE_MAX = 200;
    private static final Duration STEP = Duration.ofMinutes(15);

    private final Words words;
    private final Language language;

    VisitForm(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /** Takes a booking, or refuses with {@link Invalid}. */
    interface Books {
        void book(Booking booking);
    }

    /** Takes a new start, or refuses with {@link Invalid}. */
    interface Moves {
        void to(LocalDateTime start);
    }

    Div booking(List<VisitKind> kinds, Optional<String> kind, Optional<String> purpose, LocalDate day, Books books) {
        var chosen = new ComboBox<VisitKind>(say("desk.form.kind"));
        chosen.setItems(kinds);
        chosen.setItemLabelGenerator(k -> k.name().in(language));
        var minutes = new IntegerField(say("desk.form.minutes"));
        minutes.setSuffixComponent(Tags.span("hw-sub", say("desk.form.min")));
        chosen.addValueChangeListener(event -> {
            if (event.getValue() != null) {
                minutes.setValue(event.getValue().minutes());
            }
        });
        kinds.stream()
                .filter(k -> kind.filter(k.id()::equals).isPresent())
                .findFirst()
                .ifPresent(chosen::setValue);
        var on = day(day);
        var at = time(LocalTime.of(9, 0));
        var place = new TextField(say("desk.form.place"));
        place.setMaxLength(PLACE_MAX);
        var fields = Map.of("kind", chosen, "start", on, "time", at, "minutes", minutes, "place", place);
        on.setId(DeskPanel.FIRST);
        var save = Tags.button(
                "main wide",
                say("desk.form.book"),
                pressed -> attempt(fields, () -> {
                    var start = start(on, at);
                    books.book(new Booking(
                            chosen.getValue() == null ? "" : chosen.getValue().id(),
                            start,
                            minutes.getValue() == null ? 0 : minutes.getValue(),
                            place.getValue().strip(),
                            purpose));
                }));
        return Tags.div("hw-visit-form", chosen, on, at, minutes, place, save);
    }

    Div moving(Visit visit, Moves moves) {
        var on = day(visit.start().toLocalDate());
        var at = time(visit.start().toLocalTime());
        var fields = Map.of("start", on, "time", at);
        var save = Tags.button(
                "plain wide", say("desk.form.move"), pressed -> attempt(fields, () -> moves.to(start(on, at))));
        return Tags.div("hw-visit-form", on, at, save);
    }

    private DayField day(LocalDate day) {
        var field = new DayField(say("desk.form.day"), words, language);
        field.setValue(day);
        return field;
    }

    private TimePicker time(LocalTime time) {
        var field = new TimePicker(say("desk.form.time"), time);
        field.setLocale(language.locale());
        field.setStep(STEP);
        // a list that opens by itself covers what comes next
        field.setAutoOpen(false);
        return field;
    }

    private static LocalDateTime start(DayField on, TimePicker at) {
        var problems = new ArrayList<Problem>();
        if (on.getValue() == null) {
            problems.add(Problem.at("start", "desk.form.no-day"));
        }
        if (at.getValue() == null) {
            problems.add(Problem.at("time", "desk.form.no-time"));
        }
        Invalid.ifAny(problems);
        return on.getValue().atTime(at.getValue());
    }

    private void attempt(Map<String, ? extends HasValidation> fields, Runnable work) {
        try {
            work.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, words, language);
        }
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
