package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Section;
import java.time.Instant;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs.Report;

/** What the family has reported or written, newest first, and who of the team read it when. */
class ReportList extends Section {

    /**
     * Draws it.
     *
     * @param lines whom to call while nobody has read a report
     */
    ReportList(Reader reader, String title, List<Report> reports, List<CallLines.Line> lines) {
        addClassName("u-mt5");
        getElement().setAttribute("aria-label", title);
        var list = Bits.el("ul", "hw-stack u-gap2");
        reports.forEach(report -> list.add(item(reader, report, lines)));
        add(Tags.h2("hw-h2", title), list);
    }

    private static HtmlContainer item(Reader reader, Report report, List<CallLines.Line> lines) {
        var item = Bits.el("li", "hw-sheet hw-told");
        item.add(Tags.p("hw-s hw-quiet", reader.say("family.report.by", report.by(), when(reader, report.at()))));
        report.signs().forEach(sign -> item.add(Tags.p("hw-b", reader.text(sign.says()))));
        if (!report.note().isBlank()) {
            item.add(Tags.p("hw-own-words", report.note()));
        }
        if (report.teamOnly()) {
            item.add(read("", Icon.LOCK, reader.say("family.notes.is-team-only")));
        }
        item.add(report.read()
                .map(read -> read("", Icon.CHECK, reader.say("family.report.read", read.by(), when(reader, read.at()))))
                .orElseGet(() -> read(
                        "open",
                        Icon.HOURS,
                        reader.say(report.signs().isEmpty() ? "family.notes.unread" : "family.report.unread"))));
        if (report.read().isEmpty()) {
            lines.stream()
                    .filter(line ->
                            report.urgency().filter(line.urgency()::equals).isPresent())
                    .forEach(line -> item.add(call(reader, line)));
        }
        return item;
    }

    /** The number that the sign asked for, until somebody has read the report. */
    private static Component call(Reader reader, CallLines.Line line) {
        var how = line.urgency() == Urgency.HOURS ? "plain" : "main";
        return CallRows.link("hw-button wide " + how, line, Icon.PHONE.draw(), Tags.span("", reader.text(line.call())));
    }

    private static HtmlContainer read(String kind, Icon icon, String words) {
        return Bits.el("p", "hw-state " + kind, icon.draw("sm"), Tags.span("", words));
    }

    private static String when(Reader reader, Instant at) {
        var local = reader.local(at);
        return reader.say("family.when", local.toLocalDate(), local.toLocalTime());
    }
}
