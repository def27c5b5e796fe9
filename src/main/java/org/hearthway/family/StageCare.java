package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Care;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** What a family minds in a stage: what must wait and until when, the signs that matter, and who answers questions. */
@org.springframework.stereotype.Component
class StageCare {

    private static final int YEARS_OF_NO_END = 2;

    private final Signs signs;
    private final CallLines lines;

    StageCare(Signs signs, CallLines lines) {
        this.signs = signs;
        this.lines = lines;
    }

    /** The rules of the whole path that hold today. */
    Optional<Component> today(Reader reader, Plan plan) {
        return rules(
                reader,
                plan.stages().stream()
                        .flatMap(stage -> stage.precautions().stream())
                        .filter(care -> care.holdsOn(reader.today()))
                        .toList());
    }

    /** The rules that a stage ahead brings. */
    Optional<Component> ahead(Reader reader, Planned stage) {
        return rules(reader, stage.clash().isPresent() ? List.of() : stage.precautions());
    }

    private static Optional<Component> rules(Reader reader, List<Care> rules) {
        if (rules.isEmpty()) {
            return Optional.empty();
        }
        var spans = new LinkedHashMap<String, List<Care>>();
        rules.stream()
                .sorted(Comparator.comparing(Care::until))
                .forEach(care -> spans.computeIfAbsent(span(reader, care), span -> new ArrayList<>())
                        .add(care));
        var all = Tags.div("hw-cares");
        spans.forEach((span, some) -> all.add(Bits.el("h5", "", reader.large(span)), list(reader, some)));
        var title = Tags.span("", Bits.el("b", "", reader.say("family.path.care")));
        title.add(Bits.el("small", "", count(reader, rules.size(), spans)));
        return Optional.of(fold("ember", Icon.REST, title, all));
    }

    private static String count(Reader reader, int rules, Map<String, List<Care>> spans) {
        return spans.size() == 1
                ? reader.say(
                        "family.path.care.count",
                        rules,
                        spans.keySet().iterator().next())
                : reader.say("family.path.care.each", rules);
    }

    private static Component list(Reader reader, List<Care> some) {
        var list = Bits.el("ul", "");
        some.forEach(care -> list.add(Bits.el("li", "", reader.text(care.rule().says()))));
        return list;
    }

    /** "until Tuesday, April 14"; a rule that begins later says from when. */
    private static String span(Reader reader, Care care) {
        var later = care.from().isAfter(reader.today());
        if (hasNoEnd(reader, care.until())) {
            return later
                    ? reader.say("family.path.care.from", PathWords.day(reader, care.from()))
                    : reader.say("family.path.care.no-end");
        }
        var until = PathWords.day(reader, care.until());
        return later
                ? reader.say("family.path.care.from-until", PathWords.day(reader, care.from()), until)
                : reader.say("family.path.care.until", until);
    }

    private static boolean hasNoEnd(Reader reader, LocalDate until) {
        return until.isAfter(reader.today().plusYears(YEARS_OF_NO_END));
    }

    /** The signs that matter in a stage, and the way to whom to call. */
    Optional<Component> signs(Reader reader, Planned stage) {
        var some = signs.all().stream()
                .filter(sign -> stage.stage().signs().contains(sign.id()))
                .toList();
        if (some.isEmpty()) {
            return Optional.empty();
        }
        var all = Tags.div("hw-cares");
        for (var urgency : Urgency.values()) {
            var these = some.stream().filter(sign -> sign.urgency() == urgency).toList();
            CallRows.only(lines.lines(), urgency).stream()
                    .filter(line -> !these.isEmpty())
                    .forEach(line -> all.add(
                            Bits.el(
                                    "h5",
                                    "",
                                    CallRows.icon(urgency).draw("sm"),
                                    Tags.span("", reader.text(line.title())),
                                    // on the page the link below leads to the numbers; paper has to name them
                                    Tags.span("hw-number-on-paper", reader.text(line.call()))),
                            list(reader, these)));
        }
        all.add(Tags.link("hw-button plain wide", reader.address("call"), reader.say("family.place.call")));
        var title = Tags.span("", Bits.el("b", "", reader.say("family.path.signs")));
        title.add(Bits.el("small", "", reader.say("family.path.signs.count", some.size())));
        return Optional.of(fold("berry", Icon.CALL, title, all));
    }

    private static Component list(Reader reader, Iterable<Sign> some) {
        var list = Bits.el("ul", "");
        some.forEach(sign -> list.add(Bits.el("li", "", reader.text(sign.says()))));
        return list;
    }

    private static Component fold(String kind, Icon icon, Component title, Component holds) {
        return Bits.el(
                "details", "hw-mind " + kind, Bits.el("summary", "", icon.draw(), title, Icon.DOWN.draw("sm")), holds);
    }

    /** Who leads the stage, and the number for questions. */
    Component who(Reader reader, Planned stage) {
        var words =
                Tags.p("hw-ask", reader.say("family.path.who." + stage.stage().who()) + " ");
        CallRows.only(lines.lines(), Urgency.HOURS)
                .forEach(line -> words.add(CallRows.link(
                        "u-kiln", line, Tags.span("", reader.say("family.path.ask", reader.text(line.call()))))));
        return words;
    }
}
