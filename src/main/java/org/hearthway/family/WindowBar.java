package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.SvgText;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.visit.Visit;

/** The days that are left for a refill on one bar: today, the days until refill-by, and the alarm after them. */
final class WindowBar {

    private static final double LEFT = 24;
    private static final double RIGHT = 334;
    private static final double LEAST_GAP = 92;

    private final Reader reader;
    private final RefillWindow refill;
    private final LocalDate alarm;
    private final SvgText picture;

    private WindowBar(Reader reader, RefillWindow refill, LocalDate alarm, String label) {
        this.reader = reader;
        this.refill = refill;
        this.alarm = alarm;
        this.picture = new SvgText("hw-window", 0, 0, 358, 84).named(label);
    }

    /** The bar; empty when nobody knows when the pump would sound. */
    static Optional<Component> of(Reader reader, RefillWindow refill, Optional<Visit> booked) {
        return refill.alarm().map(alarm -> {
            var label = reader.say(
                    "family.refill.bar",
                    PathWords.date(reader, reader.today()),
                    PathWords.date(reader, refill.day()),
                    PathWords.date(reader, alarm));
            return new WindowBar(reader, refill, alarm, label).draw(booked);
        });
    }

    private double x(LocalDate day) {
        var all = Math.max(1, ChronoUnit.DAYS.between(reader.today(), alarm));
        var gone = ChronoUnit.DAYS.between(reader.today(), day);
        return LEFT + (RIGHT - LEFT - 40) * Math.min(1.0, (double) gone / all);
    }

    private Component draw(Optional<Visit> booked) {
        // the words under the bar need room even when the two days lie close together
        var sounds = x(alarm);
        var by = Math.max(LEFT + 60, Math.min(x(refill.day()), sounds - LEAST_GAP));
        picture.shape("path", "class", "wb-bed", "d", "M8 30q0-7 8-7h324q9 0 9 8v11q0 8-8 8H15q-7 0-7-8z");
        var window =
                "M" + SvgText.number(LEFT) + " 19H" + SvgText.number(by) + "q4 17 0 35H" + SvgText.number(LEFT) + "z";
        picture.shape("path", "class", "wb-win", "d", window).shape("path", "class", "wb-edge", "d", window);
        picture.text((LEFT + by) / 2, 42, "wb-on", "middle", reader.say("family.refill.word"));
        line("wb-line", LEFT);
        picture.text(LEFT - 14, 10, "wb-tb", "start", reader.say("family.refill.today"));
        picture.text(by, 73, "wb-t", "end", reader.say("family.refill.until", shortly(refill.day())));
        line("wb-dash", sounds);
        picture.text(RIGHT + 16, 10, "wb-t", "end", reader.say("family.refill.beep"));
        picture.text(RIGHT + 16, 73, "wb-t", "end", reader.say("family.refill.about", shortly(alarm)));
        booked.map(visit -> visit.start().toLocalDate()).ifPresent(day -> line("wb-line", Math.min(x(day), by)));
        return new Drawing(picture);
    }

    private String shortly(LocalDate day) {
        return reader.words().shortMonthDay(reader.language(), day);
    }

    private void line(String style, double x) {
        picture.shape("path", "class", style, "d", "M" + SvgText.number(x) + " 16v42");
    }
}
