package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import java.util.function.Consumer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.words.Words;

/** What the page of a pump shows of it: what has to be known first, the state, the forecast, the sums, the book. */
final class PumpPage extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;
    private final transient PumpReading reading;

    PumpPage(PumpFigures figures, Words words, PumpReading reading, PumpActs acts, Consumer<String> explain) {
        this.figures = figures;
        this.say = figures.words();
        this.reading = reading;
        addClassName("hw-pump");
        if (reading.outlook().fill().isEmpty() && reading.refillInCheck().isEmpty()) {
            withoutFill();
        }
        add(new PumpNotices(figures, reading, acts));
        // while a refill waits for its check nothing of before is true any more, and nothing of the new one may be told
        if (reading.outlook().fill().isPresent() && reading.refillInCheck().isEmpty()) {
            discrepancy(words, explain);
            add(state());
        }
        if (reading.outlook().fill().isPresent()) {
            add(new RefillFindings(
                    figures, reading.outlook().refills(), reading.rules().residual()));
        }
        add(new PumpHistory(figures, reading, acts));
        if (reading.mayRecord() && reading.takenOutOn().isEmpty()) {
            var around = new NativeDetails(say.say("pump.after.title"));
            around.addClassNames("hw-sums", "hw-noprint");
            around.setContent(new AfterImplant(figures, words, reading));
            add(around);
        }
    }

    private void discrepancy(Words words, Consumer<String> explain) {
        reading.outlook()
                .window()
                .flatMap(RefillWindow::printOut)
                .filter(PrintOutCheck::flagged)
                .ifPresent(check -> {
                    var told = new Discrepancy(figures, check, reading);
                    add(reading.outlook().discrepancy() && reading.mayRecord() ? told.ask(words, explain) : told);
                });
    }

    private Component state() {
        var left = Tags.div("hw-pumpnow", Tags.div("hw-colh", Tags.h2("", say.say("pump.state.title"))));
        var right = Tags.div("hw-pumpahead");
        reading.outlook().reservoir().ifPresent(reservoir -> {
            left.add(new ReservoirDrawing(figures).draw(reservoir.pump(), reservoir.at(reading.now())));
            reading.outlook()
                    .window()
                    .ifPresent(window -> right.add(new PumpPicture(figures, reservoir, window, reading)));
        });
        left.add(new StateFacts(figures, reading));
        right.add(Tags.div(
                "",
                Tags.div("hw-colh", Tags.h2("", say.say("pump.state.dates"))),
                new PumpDates(figures, reading).all(),
                Tags.p("hw-sub", say.say("pump.state.caution"))));
        var sums = new NativeDetails(say.say("pump.sums.title"));
        sums.addClassName("hw-sums");
        sums.setContent(new PumpSumsList(figures, reading, false));
        sums.setOpen(true);
        var state = Tags.div("hw-pumpstate", left, right);
        return reading.outlook().setting().isPresent() ? Tags.div("hw-pump", state, sums) : state;
    }

    /** Why no day to refill by is told: none of an earlier pump's stands for the one that is in. */
    private void withoutFill() {
        if (reading.takenOutOn().isPresent()) {
            without(
                    "pump.out",
                    "pump.out.hint",
                    say.say("pump.out.since", say.date(reading.takenOutOn().get())));
        } else if (reading.unfilledSince().isPresent()) {
            var since = say.date(reading.unfilledSince().get());
            without(
                    "pump.unfilled",
                    "pump.unfilled.hint",
                    say.say(reading.history().isEmpty() ? "pump.unfilled.since" : "pump.unfilled.new", since));
        } else {
            without("pump.none", "pump.none.hint", "");
        }
    }

    private void without(String title, String hint, String says) {
        add(Tags.div("hw-colh", Tags.h2("", say.say(title))));
        if (!says.isEmpty()) {
            add(Tags.div("hw-banner u-my2", Icon.REFILL.draw(), Tags.div("", new Span(says))));
        }
        add(
                Tags.p("hw-quiet", say.say(hint)),
                Tags.link("", "staff/child/" + reading.child() + "/device", say.say("pump.to-devices")));
    }
}
