package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Line;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.engine.TaperCalendar;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign.Urgency;
import org.springframework.core.annotation.Order;

/**
 * The medicines, each as two people of the team copied it. A dose that nobody checked a second time is not here; that
 * one is being written down is.
 */
@Order(10)
@org.springframework.stereotype.Component
class MedicineSection implements AlongsideSection {

    private final Medicines medicines;
    private final CallLines lines;
    private final Pause pauses;

    MedicineSection(Medicines medicines, CallLines lines, Pause pauses) {
        this.medicines = medicines;
        this.lines = lines;
        this.pauses = pauses;
    }

    @Override
    public Optional<Component> draw(Reader reader) {
        var shown = medicines.shown(reader.viewer(), reader.id());
        if (shown.lines().isEmpty() && !shown.writing()) {
            return Optional.empty();
        }
        var section = Tags.section("hw-stack u-gap3", reader.say("family.medicine.title"));
        section.add(Tags.h2("hw-h2 u-m0", reader.say("family.medicine.title")));
        if (shown.writing()) {
            section.add(Bits.strip("ember", Icon.SECOND, reader.say("family.medicine.writing")));
        }
        var taken =
                shown.lines().stream().filter(line -> !hasStopped(reader, line)).toList();
        var list = Bits.el("ul", "hw-stack hw-meds");
        taken.forEach(line -> list.add(taken(reader, line)));
        section.add(list);
        if (!taken.isEmpty()) {
            section.add(Tags.p("hw-s hw-quiet", reader.say("family.medicine.label")));
        }
        var stopped =
                shown.lines().stream().filter(line -> hasStopped(reader, line)).toList();
        if (!stopped.isEmpty()) {
            section.add(stopped(reader, stopped));
        }
        return Optional.of(section);
    }

    private static boolean hasStopped(Reader reader, Line line) {
        return stopDay(line).filter(day -> !day.isAfter(reader.today())).isPresent();
    }

    private static Optional<LocalDate> stopDay(Line line) {
        return line.medicine()
                .data()
                .stop()
                .map(Medicines.Stop::on)
                .or(() -> line.calendar().flatMap(TaperCalendar::stopsOn));
    }

    private Component taken(Reader reader, Line line) {
        var data = line.medicine().data();
        var item = Bits.el("li", "hw-sheet hw-med");
        item.add(Bits.el("h3", "u-l", data.name()));
        if (!data.form().isEmpty()) {
            item.add(Tags.p("hw-s hw-quiet", data.form()));
        }
        var runs = line.calendar().filter(calendar -> runs(reader, calendar));
        item.add(Tags.p("hw-dose-as", runs.isPresent() ? reader.say("family.medicine.by-calendar") : data.dose()));
        item.add(Tags.p("hw-s", facts(reader, data)));
        line.calendar().ifPresent(calendar -> item.add(calendar(reader, calendar)));
        return item;
    }

    /** From its first day on, the calendar says the dose, and the line does not. */
    private static boolean runs(Reader reader, TaperCalendar calendar) {
        return !calendar.steps().get(0).from().isAfter(reader.today());
    }

    private static String facts(Reader reader, MedicineData data) {
        var facts = new ArrayList<String>();
        facts.add(reader.say("family.medicine.how." + data.how()));
        facts.add(reader.say("family.medicine.for", purpose(reader, data)));
        facts.add(reader.say(
                data.since().isAfter(reader.today()) ? "family.medicine.from" : "family.medicine.since",
                reader.words().monthDayYear(reader.language(), data.since())));
        facts.add(reader.say("family.medicine.by", data.prescriber()));
        return String.join(" · ", facts);
    }

    /** In the reader's language; in the other one when the team typed only that. */
    private static String purpose(Reader reader, MedicineData data) {
        var own = reader.language() == Language.ES ? data.purposeEs() : data.purposeEn();
        return own.isEmpty() ? data.purposeEn() + data.purposeEs() : own;
    }

    private Component calendar(Reader reader, TaperCalendar calendar) {
        // while nothing is asked of the family, no row says that it is today's
        var asks = !pauses.asksNothing(reader);
        var days = Bits.el("ol", "hw-taper");
        days.getElement().setAttribute("aria-label", reader.say("family.medicine.calendar"));
        var now = calendar.on(reader.today()).filter(step -> asks);
        for (var step : calendar.steps()) {
            var here = now.filter(step::equals).isPresent();
            var past = !here
                    && asks
                    && now.filter(held -> held.from().isAfter(step.from())).isPresent();
            days.add(row(reader, here ? "on" : past ? "past" : "", day(reader, step.from()), step.dose(), here));
        }
        calendar.stopsOn()
                .ifPresentOrElse(
                        stop -> days.add(
                                row(reader, "", day(reader, stop), reader.say("family.medicine.calendar.stop"), false)),
                        () -> days.add(Bits.el("li", "then", reader.say("family.medicine.calendar.stay"))));
        var box = Tags.div("hw-stack u-gap2", Bits.el("h4", "hw-s hw-b", reader.say("family.medicine.calendar")), days);
        box.add(Bits.strip("ember", Icon.NOW, reader.say("family.medicine.sudden")));
        box.add(
                Tags.p("", reader.say("family.medicine.ran-out")),
                new CallRows(reader, CallRows.only(lines.lines(), Urgency.URGENT)));
        return box;
    }

    /** With the weekday: a calendar on the wall has one too. */
    private static String day(Reader reader, LocalDate day) {
        return day.getYear() == reader.today().getYear() ? reader.date(day) : PathWords.date(reader, day);
    }

    private static HtmlContainer row(Reader reader, String state, String day, String dose, boolean here) {
        var what = Tags.span("what", dose);
        var row = Bits.el("li", state, Tags.span("day", reader.say("family.medicine.calendar.from", day)), what);
        if (here) {
            row.getElement().setAttribute("aria-current", "date");
            row.add(Tags.span("hw-label ember", reader.say("family.medicine.calendar.today")));
        }
        return row;
    }

    private static Component stopped(Reader reader, List<Line> stopped) {
        var summary = Bits.el(
                "summary",
                "hw-fold",
                Tags.span("n", reader.say("family.medicine.stopped", stopped.size())),
                Icon.DOWN.draw());
        var list = Bits.el("ul", "hw-behind");
        stopped.stream().flatMap(line -> stopped(reader, line)).forEach(list::add);
        return Bits.el("details", "hw-past", summary, list);
    }

    private static Stream<HtmlContainer> stopped(Reader reader, Line line) {
        return stopDay(line).stream()
                .map(day -> Bits.el(
                        "li",
                        "",
                        Bits.pip("done"),
                        Tags.span(
                                "",
                                Bits.el("b", "hw-b", line.medicine().data().name()),
                                Bits.el(
                                        "small",
                                        "",
                                        reader.say(
                                                "family.medicine.stopped.since",
                                                reader.words().monthDayYear(reader.language(), day))))));
    }
}
