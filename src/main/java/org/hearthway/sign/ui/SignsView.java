package org.hearthway.sign.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.words.Words;

/** What the family reported and wrote, newest first, and beside it the signs that this family is shown. */
@Route("staff/child/:child/signs")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class SignsView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Signs signs;
    private final transient CallLines lines;
    private final transient Gate gate;
    private final transient SignWords words;
    private final transient Viewer.Person viewer;
    private final Div reports = new Div();
    private final Div beside = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));

    SignsView(Signs signs, CallLines lines, Gate gate, Words words, ClinicSettings clinic, SignedIn signedIn) {
        this.signs = signs;
        this.lines = lines;
        this.gate = gate;
        this.viewer = signedIn.require();
        this.words = new SignWords(words, viewer.language(), clinic.zone());
        addClassName("hw-desk");
        reports.addClassName("hw-reports");
        add(Tags.div("hw-cols u-side24", reports, beside));
    }

    @Override
    public String getPageTitle() {
        return words.say("sign.folder.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        drawReports();
        drawSigns();
    }

    private void drawReports() {
        reports.removeAll();
        var all = signs.of(viewer, child);
        var open = all.stream().filter(report -> report.read().isEmpty()).count();
        var head = Tags.div("hw-colh", Tags.h2("", words.say("sign.folder.reports")));
        if (!all.isEmpty()) {
            head.add(Tags.span("hw-quiet", words.say("sign.folder.count", all.size(), open)));
        }
        reports.add(head);
        if (all.isEmpty()) {
            reports.add(Tags.p("hw-quiet", words.say("sign.folder.none")));
        }
        Optional<Consumer<UUID>> mark =
                gate.allows(viewer, Action.WORK_NEEDS, child) ? Optional.of(this::markRead) : Optional.empty();
        all.forEach(report -> reports.add(new ReportCard(words, report, mark)));
    }

    private void markRead(UUID key) {
        signs.read(viewer, child, key);
        Told.done(words.say("sign.folder.marked"));
        drawReports();
    }

    private void drawSigns() {
        beside.removeAll();
        var topics = signs.topics(viewer, child);
        var mine = signs.all().stream()
                .filter(sign -> topics.contains(sign.topic()))
                .collect(Collectors.toList());
        beside.add(
                Tags.div("hw-colh", Tags.h2("", words.say("sign.folder.signs"))),
                Tags.p("hw-quiet", words.say(mine.isEmpty() ? "sign.folder.signs.none" : "sign.folder.signs.hint")));
        for (var line : lines.lines()) {
            var some = mine.stream()
                    .filter(sign -> sign.urgency() == line.urgency())
                    .collect(Collectors.toList());
            if (!some.isEmpty()) {
                beside.add(group(line, some));
            }
        }
    }

    private Component group(CallLines.Line line, List<Sign> some) {
        var list = new UnorderedList();
        list.addClassName("hw-list");
        some.forEach(sign -> list.add(new ListItem(words.text(sign.says()))));
        var head = Tags.div(
                "head",
                SignWords.icon(line.urgency()).draw("sm"),
                Tags.span("hw-b", words.text(line.title())),
                Tags.span("hw-quiet", line.number()));
        return Tags.section("hw-signs", words.text(line.title()), head, list);
    }
}
