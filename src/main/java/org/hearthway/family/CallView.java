package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.HashSet;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Gate;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** When to call, and whom: the three rows first, the signs of this child, what to say, then the report after the call. */
@Route("my/:child/call")
@PermitAll
class CallView extends FamilyPage {

    /** In the address: leads to the report at once. */
    static final String AFTER_THE_CALL = "after-the-call";

    private static final int REPORTS_SHOWN = 5;

    private final transient Signs signs;
    private final transient FamilyPlans plans;
    private final transient Gate gate;
    private final transient CallLines lines;
    private final transient ClinicSettings clinic;
    private final transient EmergencySheets sheets;
    private final transient Devices devices;
    private final transient ChildRegister children;

    CallView(
            Readers readers,
            Signs signs,
            FamilyPlans plans,
            Gate gate,
            CallLines lines,
            ClinicSettings clinic,
            EmergencySheets sheets,
            Devices devices,
            ChildRegister children) {
        super(readers);
        this.signs = signs;
        this.plans = plans;
        this.gate = gate;
        this.lines = lines;
        this.clinic = clinic;
        this.sheets = sheets;
        this.devices = devices;
        this.children = children;
    }

    @Override
    Place place() {
        return Place.CALL;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.call");
    }

    @Override
    void draw(Reader reader) {
        var all = lines.lines();
        var topics = signs.topics(reader.viewer(), reader.id());
        // the same words can stand under several topics; a family reads them once
        var said = new HashSet<Bilingual>();
        var mine = signs.all().stream()
                .filter(sign -> topics.contains(sign.topic()))
                .filter(sign -> said.add(sign.says()))
                .toList();
        add(Tags.div(
                "hw-hero u-pb3",
                Tags.h1(reader.say("family.call.title")),
                Tags.p("hw-quiet hw-s u-mt1", reader.say("family.call.never-too-soon"))));
        add(new CallRows(reader, all));
        add(Tags.p("hw-first", reader.say("family.call.first")), new Aloud(reader));
        if (devices.anyInPlace(reader.id())) {
            add(emergency(reader));
        }
        add(Tags.h2("hw-h2", reader.say("family.call.signs", reader.name())));
        var stack = Tags.div("hw-stack");
        for (var line : all) {
            var some = mine.stream()
                    .filter(sign -> sign.urgency() == line.urgency())
                    .toList();
            if (!some.isEmpty()) {
                stack.add(signs(reader, line, some));
            }
        }
        stack.add(whatToSay(reader));
        var after = after(reader, mine);
        add(stack, after, reports(reader));
        asked(AFTER_THE_CALL).ifPresent(asked -> after.scrollIntoView());
        add(Bits.strip("quiet u-mt5", Icon.NOTES, notes(reader)));
    }

    private Component signs(Reader reader, CallLines.Line line, List<Sign> some) {
        var link = CallRows.link("", line, Tags.span("", line.number()));
        link.getElement().setAttribute("aria-label", reader.text(line.call()));
        var list = Bits.el("ul", "signs");
        some.forEach(sign -> list.add(Bits.el("li", "", Tags.span("", reader.text(sign.says())))));
        var title = Bits.el("h2", "", reader.text(line.title()));
        var section = Bits.el(
                "section",
                "hw-call " + CallRows.style(line.urgency()),
                Bits.el("header", "", CallRows.icon(line.urgency()).draw(), title, link));
        if (line.urgency() == Urgency.HOURS) {
            section.add(Tags.p("hw-s hw-b", reader.text(lines.officeNow())));
        }
        section.add(list);
        return section;
    }

    /** For a child with a device: the page that an emergency room reads, one press from here. */
    private Component emergency(Reader reader) {
        var open = Tags.button(
                "plain big wide",
                reader.say("family.call.sheet.open"),
                pressed -> pressed.getSource()
                        .getUI()
                        .ifPresent(ui -> ui.getPage()
                                .setLocation(sheets.open(reader.viewer(), reader.id())
                                        .path())));
        open.setId("emergency-sheet");
        return Bits.el(
                "section",
                "hw-sheet u-mt3",
                Tags.h2("u-xl", reader.say("family.call.sheet")),
                Tags.p("u-mb3", reader.say("family.call.sheet.for")),
                open);
    }

    private Component whatToSay(Reader reader) {
        var steps = Bits.el("ol", "hw-steps");
        var child = children.get(reader.viewer(), reader.id());
        var born = reader.words().dateWithYear(reader.language(), child.data().birthDate());
        say(steps, reader.say("family.call.say.name", child.fullName(), born));
        plans.plans(reader).stream()
                .map(plan -> reader.text(plan.template().name()))
                .forEach(path -> say(steps, reader.say("family.call.say.path", path, clinic.name())));
        say(steps, reader.say("family.call.say.see"));
        say(steps, reader.say("family.call.say.else"));
        return Bits.el("section", "hw-sheet", Tags.h2("u-xl u-mb3", reader.say("family.call.say")), steps);
    }

    private static void say(com.vaadin.flow.component.HtmlContainer steps, String words) {
        steps.add(Bits.el("li", "", Tags.span("", words)));
    }

    private Component after(Reader reader, List<Sign> mine) {
        if (!gate.allows(reader.viewer(), Action.REPORT, reader.id())) {
            return Bits.strip("quiet u-mt5", Icon.LOCK, reader.say("family.view-only"));
        }
        return new ReportForm(reader, mine, data -> {
            signs.report(reader.viewer(), reader.id(), data);
            Told.done(reader.say(data.called() ? "family.report.sent" : "family.report.sent.call"));
            refresh();
        });
    }

    private Component reports(Reader reader) {
        var own = signs.of(reader.viewer(), reader.id()).stream()
                .filter(report -> !report.signs().isEmpty())
                .limit(REPORTS_SHOWN)
                .toList();
        return own.isEmpty()
                ? Tags.span("", "")
                : new ReportList(reader, reader.say("family.report.own"), own, lines.lines());
    }

    private static Component notes(Reader reader) {
        var words = Tags.div("", Tags.span("", reader.say("family.call.not-urgent") + " "));
        words.add(Tags.link("u-kiln", reader.address("notes"), reader.say("family.rest.write")));
        words.add(Tags.span("", " " + reader.say("family.notes.not-at-night")));
        return words;
    }
}
