package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** When to call, and whom: the three rows first, the signs of this child, what to say, then the report after the call. */
@Route("my/:child/call")
@PermitAll
class CallView extends FamilyPage {

    private static final int REPORTS_SHOWN = 5;

    private final transient Signs signs;
    private final transient Plans plans;
    private final transient Gate gate;
    private final transient CallRows.Numbers numbers;

    CallView(Readers readers, Signs signs, Plans plans, Gate gate, CallRows.Numbers numbers) {
        super(readers);
        this.signs = signs;
        this.plans = plans;
        this.gate = gate;
        this.numbers = numbers;
    }

    @Override
    Place place() {
        return Place.CALL;
    }

    @Override
    String title(Reader reader) {
        return reader.say("place.call");
    }

    @Override
    void draw(Reader reader) {
        var topics = signs.topics(reader.viewer(), reader.id());
        var mine = signs.all().stream()
                .filter(sign -> topics.contains(sign.topic()))
                .toList();
        add(Tags.div(
                "hw-hero u-pb3",
                Tags.h1(reader.say("call.title")),
                Tags.p("hw-quiet hw-s u-mt1", reader.say("call.never-too-soon"))));
        add(new CallRows(reader, numbers, List.of(Urgency.values())));
        add(Tags.p("hw-first", reader.say("call.first")));
        add(Tags.h2("hw-h2", reader.say("call.signs", reader.name())));
        var stack = Tags.div("hw-stack");
        for (var urgency : Urgency.values()) {
            var some = mine.stream().filter(sign -> sign.urgency() == urgency).toList();
            if (!some.isEmpty()) {
                stack.add(signs(reader, urgency, some));
            }
        }
        stack.add(whatToSay(reader));
        add(stack, after(reader, mine), reports(reader));
        add(Bits.strip("quiet", Icon.NOTES, notes(reader)));
    }

    private Component signs(Reader reader, Urgency urgency, List<Sign> some) {
        var number = numbers.of(urgency);
        var link = Bits.call("", number, Tags.span("", number));
        link.getElement().setAttribute("aria-label", reader.say("call.number", number));
        var list = Bits.el("ul", "signs");
        some.forEach(sign -> list.add(Bits.el("li", "", Tags.span("", reader.text(sign.says())))));
        return Bits.el(
                "section",
                "hw-call " + CallRows.style(urgency),
                Bits.el(
                        "header",
                        "",
                        CallRows.icon(urgency).draw(),
                        Bits.el("h2", "", reader.say("call." + urgency)),
                        link),
                list);
    }

    private Component whatToSay(Reader reader) {
        var steps = Bits.el("ol", "hw-steps");
        var born = reader.words()
                .dateWithYear(reader.language(), reader.child().data().birthDate());
        say(steps, reader.say("call.say.name", reader.child().fullName(), born));
        plans.plan(reader.viewer(), reader.id())
                .map(plan -> reader.text(plan.plan().template().name()))
                .ifPresent(path -> say(steps, reader.say("call.say.path", path, numbers.clinic())));
        say(steps, reader.say("call.say.see"));
        say(steps, reader.say("call.say.else"));
        return Bits.el("section", "hw-sheet", Tags.h2("u-xl u-mb3", reader.say("call.say")), steps);
    }

    private static void say(com.vaadin.flow.component.HtmlContainer steps, String words) {
        steps.add(Bits.el("li", "", Tags.span("", words)));
    }

    private Component after(Reader reader, List<Sign> mine) {
        if (!gate.allows(reader.viewer(), Action.REPORT, reader.id())) {
            return Bits.strip("quiet u-mt5", Icon.LOCK, reader.say("view-only"));
        }
        return new ReportForm(reader, mine, data -> {
            signs.report(reader.viewer(), reader.id(), data);
            Told.done(reader.say(data.called() ? "report.sent" : "report.sent.call"));
            refresh();
        });
    }

    private Component reports(Reader reader) {
        var own = signs.of(reader.viewer(), reader.id()).stream()
                .filter(report -> !report.signs().isEmpty())
                .limit(REPORTS_SHOWN)
                .toList();
        return own.isEmpty() ? Tags.span("", "") : new ReportList(reader, reader.say("report.own"), own);
    }

    private static Component notes(Reader reader) {
        var words = Tags.div("", Tags.span("", reader.say("call.not-urgent") + " "));
        words.add(Tags.link("u-kiln", reader.address("notes"), reader.say("rest.write")));
        words.add(Tags.span("", " " + reader.say("notes.not-at-night")));
        return words;
    }
}
