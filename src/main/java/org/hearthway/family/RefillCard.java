package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Section;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.RefillBy;
import org.hearthway.sign.CallLines.Line;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.visit.Visit;

/** By when the pump must be filled, why then, and how to come by a time. */
class RefillCard extends Section {

    private static final String REFILL = "refill";
    /** From here on a missing visit is for the urgent line. Clinic practice. */
    private static final int DAYS_TO_CALL = 3;

    RefillCard(Reader reader, RefillBy refill, Optional<Visit> booked, List<Line> lines) {
        addClassName("hw-sheet");
        getElement().setAttribute("aria-label", reader.say("family.refill"));
        var left = ChronoUnit.DAYS.between(reader.today(), refill.day());
        var urgent = left <= DAYS_TO_CALL && booked.isEmpty();
        if (booked.isEmpty()) {
            addClassName("u-lit");
        }
        var over = Tags.p("hw-s hw-b u-row1 u-mid u-ember", "");
        over.add(
                Icon.REFILL.draw(),
                Tags.span("", reader.say(booked.isEmpty() ? "family.refill.open" : "family.refill.booked")));
        add(over, Tags.h2("u-xl u-mt1", headline(reader, refill, left)));
        if (left >= 0) {
            add(WindowBar.of(reader, refill, booked));
        }
        var why = Tags.p("hw-why u-my3", "");
        why.add(Bits.el("b", "", reader.say("family.refill.why") + " "), Tags.span("", why(reader, refill)));
        add(why);
        if (urgent) {
            add(Tags.p("hw-b u-mb3", reader.say(left < 0 ? "family.refill.passed" : "family.refill.near")));
            add(new CallRows(reader, CallRows.only(lines, Urgency.URGENT)));
        } else if (booked.isEmpty()) {
            add(ask(reader));
        }
    }

    /** Of a pump that no fill is recorded of: the clinic sets the day, and no earlier pump's stands for it. */
    static Section withoutDay(Reader reader, Optional<Visit> booked) {
        var card = Tags.section("hw-sheet", reader.say("family.refill"));
        var over = Tags.p("hw-s hw-b u-row1 u-mid u-ember", "");
        over.add(
                Icon.REFILL.draw(),
                Tags.span("", reader.say(booked.isEmpty() ? "family.refill.no-day" : "family.refill.booked")));
        card.add(
                over,
                Tags.h2("u-xl u-mt1", reader.say("family.refill.to-be-set")),
                Tags.p("hw-why u-my3", reader.say("family.refill.to-be-set.why")));
        if (booked.isEmpty()) {
            card.add(ask(reader));
        }
        return card;
    }

    private static Component ask(Reader reader) {
        return Tags.link(
                "hw-button main wide",
                reader.address("notes") + "?about=" + REFILL,
                Icon.DATES.draw(),
                Tags.span("", reader.say("family.refill.ask")));
    }

    private static String headline(Reader reader, RefillBy refill, long left) {
        var day = PathWords.date(reader, refill.day());
        return left < 0 ? reader.say("family.refill.was", day) : reader.say("family.refill.by", day);
    }

    private static String why(Reader reader, RefillBy refill) {
        return refill.lifeDecides()
                ? reader.say(
                        "family.refill.why.life",
                        refill.lifeLimitDays(),
                        PathWords.date(reader, refill.filled()),
                        PathWords.date(reader, refill.byLife()))
                : reader.say("family.refill.why.alarm", PathWords.date(reader, refill.alarm()), refill.marginDays());
    }

    /** The booked visit that fills the pump, if there is one. */
    static Optional<Visit> visit(List<Visit> coming) {
        return coming.stream()
                .filter(visit -> visit.kind().id().equals(REFILL)
                        || visit.purpose().filter(REFILL::equals).isPresent())
                .findFirst();
    }
}
