package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Section;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.sign.CallLines.Line;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.visit.Visit;

/** By when the pump must be filled, why then, and how to come by a time. */
class RefillCard extends Section {

    private static final String REFILL = "refill";
    /** From here on a missing visit is for the urgent line. Clinic practice. */
    private static final int DAYS_TO_CALL = 3;

    RefillCard(Reader reader, RefillWindow refill, Optional<Visit> booked, List<Line> lines, RefillSigns signs) {
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
        booked.ifPresent(visit ->
                add(Tags.p("hw-b u-mb2", reader.say("family.refill.at", VisitCard.at(reader, visit.start())))));
        if (left >= 0) {
            WindowBar.of(reader, refill, booked).ifPresent(this::add);
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
        signs.folds(reader).forEach(this::add);
    }

    /** Of a pump whose last refill waits for its second check: no date is told until then. */
    static Section beingChecked(Reader reader, LocalDate filled, RefillSigns signs) {
        var card = Tags.section("hw-sheet", reader.say("family.refill"));
        var over = Tags.p("hw-s hw-b u-row1 u-mid", "");
        over.add(Icon.REFILL.draw(), Tags.span("", reader.say("family.refill.done", PathWords.date(reader, filled))));
        card.add(
                over,
                Tags.h2("u-xl u-mt1", reader.say("family.refill.being-checked")),
                Tags.p("hw-why u-my3", reader.say("family.refill.being-checked.why")));
        signs.folds(reader).forEach(card::add);
        return card;
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

    /** "Between Tuesday, March 3 and Monday, March 9"; once the first day is there, the last alone matters. */
    private static String headline(Reader reader, RefillWindow refill, long left) {
        var day = PathWords.date(reader, refill.day());
        if (left < 0) {
            return reader.say("family.refill.was", day);
        }
        return refill.opens().isAfter(reader.today()) && refill.opens().isBefore(refill.day())
                ? reader.say("family.refill.between", PathWords.date(reader, refill.opens()), day)
                : reader.say("family.refill.by", day);
    }

    private static String why(Reader reader, RefillWindow refill) {
        return refill.lifeDecides() || refill.alarm().isEmpty()
                ? reader.say(
                        "family.refill.why.life",
                        PathWords.date(reader, refill.filled()),
                        PathWords.date(reader, refill.lifeEnds()))
                : reader.say(
                        "family.refill.why.alarm",
                        PathWords.date(reader, refill.alarm().orElseThrow()),
                        refill.marginDays());
    }

    /** The booked visit that keeps the window, if there is one. */
    static Optional<Visit> visit(List<Visit> coming, RefillWindow window) {
        return visits(coming)
                .filter(visit -> window.isKeptOn(visit.start().toLocalDate()))
                .findFirst();
    }

    /** Any booked visit that fills the pump, while nobody knows by when. */
    static Optional<Visit> visit(List<Visit> coming) {
        return visits(coming).findFirst();
    }

    private static Stream<Visit> visits(List<Visit> coming) {
        return coming.stream()
                .filter(visit -> visit.kind().id().equals(REFILL)
                        || visit.purpose().filter(REFILL::equals).isPresent());
    }
}
