package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.Surveillance.Outlook;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.core.annotation.Order;

/** When hips and back are looked at: a day that is to be confirmed, or the visit that is booked; never a number. */
@org.springframework.stereotype.Component
@Order(50)
class ChecksSection implements AlongsideSection {

    private final Surveillance surveillance;
    private final Visits visits;
    private final Pause pauses;

    ChecksSection(Surveillance surveillance, Visits visits, Pause pauses) {
        this.surveillance = surveillance;
        this.visits = visits;
        this.pauses = pauses;
    }

    @Override
    public Optional<Component> draw(Reader reader) {
        var known = surveillance.outlook(reader.viewer(), reader.id()).stream()
                .filter(outlook ->
                        outlook.last().isPresent() || (outlook.next().isPresent() && !pauses.asksNothing(reader)))
                .toList();
        if (known.isEmpty()) {
            return Optional.empty();
        }
        var section = Tags.section("hw-stack", reader.say("family.checks.title"));
        section.add(Tags.h2("hw-h2", reader.say("family.checks.title")));
        var coming = visits.upcoming(reader.viewer(), reader.id());
        known.forEach(outlook -> section.add(check(reader, outlook, coming)));
        return Optional.of(section);
    }

    private Component check(Reader reader, Outlook outlook, List<Visit> coming) {
        var sheet = Bits.el(
                "article",
                "hw-sheet",
                Bits.el("h3", "u-xl", reader.text(outlook.matter().name())));
        if (!pauses.asksNothing(reader)) {
            next(sheet, reader, outlook, coming);
        }
        outlook.last()
                .ifPresent(day -> sheet.add(Tags.p("u-mt1", reader.say("family.checks.last", date(reader, day)))));
        if (!outlook.matter().says().isEmpty()) {
            var why = Tags.div("hw-why u-my3");
            outlook.matter().says().forEach(text -> why.add(Tags.p("", reader.text(text))));
            sheet.add(why);
        }
        return sheet;
    }

    private static void next(HtmlContainer sheet, Reader reader, Outlook outlook, List<Visit> coming) {
        var booked = coming.stream()
                .filter(visit -> visit.kind().id().equals(outlook.matter().visitKind()))
                .findFirst();
        if (booked.isPresent()) {
            var day = booked.get().start().toLocalDate();
            sheet.add(Tags.p("hw-b u-my2", reader.say("family.checks.booked", date(reader, day))));
            return;
        }
        outlook.next().ifPresent(due -> {
            var words = due.by().isBefore(reader.today()) ? reader.say("family.checks.to-plan") : ahead(reader, due);
            sheet.add(Tags.p("hw-b u-my2", words), Tags.p("hw-quiet", reader.say("family.checks.to-confirm")));
        });
    }

    /** A window is told as one, so that its last day is not taken for the right one. */
    private static String ahead(Reader reader, Due due) {
        return due.from().equals(due.by())
                ? reader.say("family.checks.next", date(reader, due.by()))
                : reader.say("family.checks.between", date(reader, due.from()), date(reader, due.by()));
    }

    private static String date(Reader reader, LocalDate day) {
        return reader.words().dateWithYear(reader.language(), day);
    }
}
