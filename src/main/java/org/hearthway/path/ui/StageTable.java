package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;

/** The stages of a path, one line each: rule, earliest, planned, latest, state. The name chooses the stage. */
final class StageTable extends Div {

    private final transient StageWords words;
    private final transient Optional<Compared> compared;

    /**
     * Draws the table.
     *
     * @param address where choosing a stage leads
     * @param chosen the chosen stage's identifier, if any
     * @param alone what the path alone would make, to compare with; empty for no comparison
     */
    StageTable(
            StageWords words,
            Plan plan,
            Function<String, String> address,
            Optional<String> chosen,
            List<Move> moves,
            Optional<Plan> alone) {
        this.words = words;
        this.compared = alone.map(path -> new Compared(words, plan, path));
        addClassName("hw-scroll");
        getElement().setAttribute("role", "region").setAttribute("tabindex", "0");
        getElement()
                .setAttribute(
                        "aria-label",
                        words.say(
                                "path.of",
                                words.say("path.table"),
                                plan.template().name()));
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged", "hw-stages");
        var head = new NativeTableRow();
        for (var key : List.of("stage", "rule", "earliest", "planned", "latest", "state")) {
            var cell = new NativeTableHeaderCell(words.say("path.table." + key));
            cell.addClassName("c-" + key);
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        var moving = moves.stream().collect(Collectors.toMap(Move::stage, m -> m));
        for (var stage : plan.until(plan.today().plusYears(YEARS_AHEAD))) {
            table.getBody().add(row(plan, stage, address, chosen, moving));
        }
        add(table);
    }

    /** What comes again is laid out this far: more rows of it tell nothing new. */
    static final int YEARS_AHEAD = 2;

    private NativeTableRow row(
            Plan plan,
            Planned planned,
            Function<String, String> address,
            Optional<String> chosen,
            Map<String, Move> moving) {
        var today = plan.today();
        var row = Keys.row(new NativeTableRow(), planned.point());
        var on = chosen.filter(planned.point()::equals).isPresent();
        if (on) {
            row.addClassName("on");
        }
        var name = Keys.press(Tags.link("kidn", address.apply(planned.point()), words.name(planned)), "enter");
        if (on) {
            name.getElement().setAttribute("aria-current", "true");
        }
        var move = Optional.ofNullable(moving.get(planned.point()));
        var state = cell("state", words.state(planned, today, move.isPresent()));
        words.outside(planned).ifPresent(says -> state.add(new Text(" "), Tags.span("hw-label ember", says)));
        row.add(
                cell("stage", name),
                cell("rule", small(words.rule(plan.template(), planned))),
                bound("earliest", planned, Optional.of(planned.earliest())),
                planned(planned, today, move),
                bound("latest", planned, planned.latest()),
                state);
        return row;
    }

    /** What the rule allows matters until it is behind us. */
    private NativeTableCell bound(String column, Planned planned, Optional<LocalDate> day) {
        var cell = cell(column);
        day.filter(bound -> planned.state() != State.PAST).ifPresent(bound -> cell.add(new Span(words.bound(bound))));
        return cell;
    }

    private NativeTableCell planned(Planned planned, LocalDate today, Optional<Move> move) {
        var cell = cell("planned");
        if (planned.clash().isPresent()) {
            cell.add(Tags.span("hw-b", words.say("path.table.no-day")));
            return cell;
        }
        var was = words.date(planned.start(), today);
        move.ifPresentOrElse(
                m -> {
                    var before = new Element("s").setText(was);
                    before.setAttribute("class", "u-thin");
                    cell.getElement().appendChild(before);
                    cell.add(new Text(" "), Tags.span("hw-b", words.date(m.to(), today)));
                },
                () -> cell.add(Tags.span("hw-b", was)));
        compared.flatMap(with -> with.differs(planned)).ifPresent(says -> cell.add(Tags.div("", small(says))));
        if (planned.end().isAfter(planned.start())) {
            cell.add(new Text(" "), small(words.say("path.table.until", words.date(planned.end(), today))));
        }
        return cell;
    }

    private static Component small(String says) {
        var small = new Span(says);
        small.addClassName("hw-sub");
        return small;
    }

    private static NativeTableCell cell(String column, Component... content) {
        var cell = new NativeTableCell();
        cell.add(content);
        cell.addClassName("c-" + column);
        return cell;
    }
}
