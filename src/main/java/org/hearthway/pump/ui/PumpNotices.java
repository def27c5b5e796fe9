package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.Pumps.Concern;
import org.hearthway.pump.engine.PumpClock;
import org.hearthway.pump.engine.RefillForecast;

/** What a person has to know before anything else on the page, the gravest first. */
final class PumpNotices extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;
    private final transient PumpReading reading;
    private final transient PumpActs acts;

    PumpNotices(PumpFigures figures, PumpReading reading, PumpActs acts) {
        this.figures = figures;
        this.say = figures.words();
        this.reading = reading;
        this.acts = acts;
        addClassName("hw-notices");
        if (reading.isStopped()) {
            tell(Icon.CLASH, say.say("pump.state.stopped"));
        }
        if (reading.refillInCheck().isEmpty()) {
            due();
        }
        reading.history().stream().filter(PumpBook.Line::waits).forEach(this::waits);
        // a refill that is being checked may have set the clock anew
        reading.outlook()
                .shift()
                .filter(shift -> reading.refillInCheck().isEmpty())
                .ifPresent(this::shift);
        reading.outlook()
                .forecast()
                .ifPresent(forecast -> forecast.cautions().stream()
                        .filter(caution -> caution != RefillForecast.Caution.NOTHING_GIVEN)
                        .forEach(caution -> tell(Icon.CLASH, say.say("pump.state.caution." + caution))));
        missing();
        reading.concerns().stream()
                .filter(concern -> concern.kind() != Concern.Kind.PRINT_OUT)
                .forEach(concern ->
                        tell(Icon.WHY, say.say("pump.state.concern." + concern.kind(), say.date(concern.day()))));
        reading.outlook()
                .implant()
                .filter(implant -> implant.model().fixedFlow().isPresent())
                .ifPresent(implant -> quiet(say.say("pump.state.fixed")));
    }

    private void due() {
        reading.outlook().window().ifPresent(window -> {
            if (window.alarm().filter(alarm -> !alarm.isAfter(reading.today())).isPresent()) {
                tell(
                        Icon.URGENT,
                        say.say(
                                "pump.state.alarm-passed",
                                say.date(window.alarm().get())));
            } else if (!window.day().isAfter(reading.today())) {
                tell(Icon.REFILL, say.say("pump.state.overdue", say.date(window.day())));
            }
        });
    }

    private void waits(PumpBook.Line line) {
        var kind = line.kind() == PumpEntry.Kind.ELSEWHERE ? PumpEntry.Kind.REFILL : line.kind();
        var says = Tags.div(
                "",
                Tags.span("hw-b", say.say("pump.state.waits." + kind, say.date(figures.day(line.at())))),
                new Span(" "),
                new Span(say.say("pump.state.waits.who", reading.name(line.by()), figures.moment(line.entered()))));
        var banner = Tags.div("hw-banner", Icon.SECOND.draw(), says);
        if (line.emergency()) {
            says.add(Tags.span("hw-label ember u-ml3", say.say("pump.book.emergency")));
        }
        if (reading.mayRecord() && line.entry().isEmpty()) {
            banner.add(Tags.button("soft", say.say("pump.book.check"), pressed -> acts.check(line.number())));
        }
        add(banner);
    }

    private void shift(PumpClock.Shift shift) {
        var minutes = shift.by().toMinutes();
        tell(
                Icon.HOURS,
                say.say(
                        minutes > 0 ? "pump.state.shift.later" : "pump.state.shift.earlier",
                        say.date(figures.day(shift.since())),
                        Math.abs(minutes)));
    }

    private void missing() {
        var what = missing(reading.outlook());
        if (reading.outlook().fill().isPresent()
                && reading.outlook().reservoir().isEmpty()) {
            tell(
                    Icon.INFO,
                    say.say(
                            reading.outlook().window().isPresent()
                                    ? "pump.state.missing.print-out"
                                    : "pump.state.missing.nothing",
                            what.isEmpty()
                                    ? say.say("pump.state.missing.contradict")
                                    : say.list(what.stream()
                                            .map(one -> say.say("pump.state.missing." + one))
                                            .toList())));
        }
    }

    private static List<String> missing(PumpOutlook outlook) {
        var what = new ArrayList<String>();
        if (outlook.implant().isEmpty()) {
            what.add("implant");
        }
        if (outlook.fill()
                .filter(fill -> ((PumpEntry.Refill) fill.what()).injected().isEmpty())
                .isPresent()) {
            what.add("injected");
        }
        if (outlook.setting().isEmpty()) {
            what.add("setting");
        }
        return what;
    }

    private void tell(Icon icon, String words) {
        add(banner("hw-banner", icon, words));
    }

    private void quiet(String words) {
        add(banner("hw-banner river", Icon.INFO, words));
    }

    private static Component banner(String classes, Icon icon, String words) {
        return Tags.div(classes, icon.draw(), Tags.div("", new Span(words)));
    }
}
