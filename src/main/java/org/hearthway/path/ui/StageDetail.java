package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.Bilingual;
import org.hearthway.parts.Tags;
import org.hearthway.path.SignTexts;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Plan.Care;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.path.engine.Template.Responsible;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValuePlace.Kind;

/** What a stage asks of everybody: who is responsible, what is done by when, what it needs, and what to watch. */
final class StageDetail extends Section {

    /** Where the names of visits and signs come from. */
    record Names(VisitKindNames visits, SignTexts signs) {}

    private final transient StageWords say;
    private final transient Planned planned;
    private final transient LocalDate today;
    private final transient Function<ValuePlace, Optional<Bilingual>> ownValue;

    /**
     * Lays it out.
     *
     * @param ownValue that a value is the clinic's own; empty when it is the path's
     */
    StageDetail(
            StageWords say,
            Names names,
            Planned planned,
            LocalDate today,
            Function<ValuePlace, Optional<Bilingual>> ownValue) {
        this.say = say;
        this.planned = planned;
        this.today = today;
        this.ownValue = ownValue;
        addClassName("hw-stagedetail");
        getElement().setAttribute("aria-label", say.say("path.stage.title", say.name(planned)));
        var stage = planned.stage();
        var duties = stage.duties();
        part("path.stage.who", List.of(Tags.span("", who(stage.who()))));
        part("path.stage.entry", duties.entry().stream().map(this::text).toList());
        part(
                "path.stage.team",
                duties.staff().stream()
                        .map(task -> line(
                                task.does().in(say.language()) + " (" + who(task.who()) + ")",
                                due(task.due(), Kind.STAFF_TASK_DUE, PathValues.part(stage, task))))
                        .toList());
        part(
                "path.stage.family",
                duties.family().stream()
                        .map(task -> line(
                                task.does().in(say.language()),
                                due(task.due(), Kind.FAMILY_TASK_DUE, PathValues.part(stage, task))))
                        .toList());
        part(
                "path.stage.visits",
                planned.visits().stream()
                        .sorted(Comparator.comparing(VisitWindow::from))
                        .map(visit -> visit(names, visit))
                        .toList());
        part("path.stage.care", planned.precautions().stream().map(this::care).toList());
        part(
                "path.stage.signs",
                stage.signs().stream()
                        .flatMap(sign -> names.signs().says(sign).stream())
                        .map(this::text)
                        .toList());
        part("path.stage.exit", duties.exit().stream().map(this::text).toList());
    }

    private void part(String title, List<? extends Component> lines) {
        if (lines.isEmpty()) {
            return;
        }
        var list = new UnorderedList();
        list.addClassName("hw-plain");
        lines.forEach(line -> list.add(new ListItem(line)));
        add(Tags.div("", Tags.h2("u-m", say.say(title)), list));
    }

    private String who(Responsible who) {
        return say.say("path.who." + who.name());
    }

    private Span text(Bilingual words) {
        return Tags.span("", words.in(say.language()));
    }

    private Span line(String words, Optional<String> when) {
        var line = Tags.span("", words);
        when.ifPresent(day -> line.add(new Span(" "), Tags.span("hw-sub", day)));
        return line;
    }

    private Optional<String> due(Optional<Period> gap, Kind kind, String part) {
        var own = ownValue.apply(new ValuePlace(planned.stage().id(), kind, part));
        return gap.map(planned.start()::plus)
                .map(day -> say.say("path.stage.by", say.date(day, today)))
                .map(by -> own.map(says -> by + ". " + says.in(say.language())).orElse(by));
    }

    private Span visit(Names names, VisitWindow window) {
        var name = names.visits()
                .name(window.kind())
                .map(kind -> kind.in(say.language()))
                .orElse(window.kind());
        return line(name, Optional.of(between(window.from(), window.until())));
    }

    private Span care(Care care) {
        var rule = care.rule();
        var says = say.say(rule.forbids() ? "path.stage.care.not" : "path.stage.care.with", rule.says());
        return line(
                says, Optional.of(between(care.from(), care.until().minusDays(1)) + ". " + say.source(rule.source())));
    }

    private String between(LocalDate from, LocalDate until) {
        return from.equals(until)
                ? say.date(from, today)
                : say.say("path.stage.between", say.date(from, today), say.date(until, today));
    }
}
