package org.hearthway.sign.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs.Report;

/** One report of a family, or one note: how urgent, when and by whom, in the family's own words, and who read it. */
final class ReportCard extends Article {

    ReportCard(SignWords words, Report report, Optional<Consumer<UUID>> markRead) {
        addClassNames("hw-report", report.urgency().map(SignWords::style).orElse("note"));
        if (report.read().isEmpty()) {
            addClassName("open");
        }
        add(head(words, report));
        if (!report.signs().isEmpty()) {
            var signs = new UnorderedList();
            report.signs().forEach(sign -> signs.add(new ListItem(words.text(sign.says()))));
            add(signs);
        }
        if (!report.note().isEmpty()) {
            add(Tags.p("own", report.note()));
        }
        add(foot(words, report, markRead));
    }

    private static Component head(SignWords words, Report report) {
        var head = Tags.div("head", icon(report.urgency()).draw());
        head.add(Tags.h2("", kind(words, report)));
        var when = words.when(report.at());
        head.add(
                Tags.span("hw-quiet", report.by().isEmpty() ? when : words.say("sign.folder.from", report.by(), when)));
        if (report.teamOnly()) {
            head.add(Tags.span("hw-label line", words.say("sign.folder.team-only")));
        }
        if (!report.signs().isEmpty()) {
            head.add(Tags.span(
                    report.called() ? "hw-label line" : "hw-label ember",
                    words.say(report.called() ? "sign.folder.called" : "sign.folder.not-called")));
        }
        return head;
    }

    private static Icon icon(Optional<Sign.Urgency> urgency) {
        return urgency.map(SignWords::icon).orElse(Icon.NOTES);
    }

    private static String kind(SignWords words, Report report) {
        return report.urgency()
                .map(urgency -> words.say("sign.urgency." + SignWords.style(urgency)))
                .orElseGet(() -> words.say("sign.folder.note"));
    }

    private static Component foot(SignWords words, Report report, Optional<Consumer<UUID>> markRead) {
        var foot = Tags.div("foot");
        report.read()
                .ifPresentOrElse(
                        read -> foot.add(
                                Icon.CHECK.draw("sm"),
                                Tags.span("", words.say("sign.folder.read-by", read.by(), words.when(read.at())))),
                        () -> markRead.ifPresentOrElse(
                                mark -> foot.add(Tags.button(
                                        "plain",
                                        Icon.CHECK,
                                        words.say("sign.folder.mark"),
                                        pressed -> mark.accept(report.key()))),
                                () -> foot.add(Tags.span("hw-quiet", words.say("sign.folder.unread")))));
        return foot;
    }
}
