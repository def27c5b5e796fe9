package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.NeedFigures;
import org.hearthway.caseload.NeedFigures.Said;
import org.hearthway.caseload.NeedFigures.Value;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.ClinicTabs;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** The numbers at which a home program comes onto the list: what ships, what the clinic says, and every word about them. */
@Route("staff/clinic/needs")
@RolesAllowed("ADMINISTRATOR")
class NeedFiguresView extends Div implements HasDynamicTitle {

    private final transient NeedFigures figures;
    private final transient Accounts accounts;
    private final transient SignedIn signedIn;
    private final transient ClinicSettings settings;
    private final transient Words words;
    private final Language language;
    private final Div main = Tags.div("hw-clinic-list");
    private final Div side = Tags.div("hw-clinic-side");

    NeedFiguresView(NeedFigures figures, Accounts accounts, SignedIn signedIn, ClinicSettings settings, Words words) {
        this.figures = figures;
        this.accounts = accounts;
        this.signedIn = signedIn;
        this.settings = settings;
        this.words = words;
        this.language = signedIn.require().language();
        addClassName("hw-worksheet");
        add(
                Tags.div(
                        "hw-main hw-clinic",
                        new ClinicTabs(words, language, "needs"),
                        Tags.div(
                                "hw-title",
                                Tags.h1(getPageTitle()),
                                Tags.span("hw-quiet", say("caseload.figure.says"))),
                        Tags.div("hw-clinic-columns", main, side)),
                new KeyBar());
        draw();
    }

    @Override
    public String getPageTitle() {
        return say("access.clinic.needs");
    }

    /** Asked anew for each act, so that a lost role counts at once. */
    private Viewer.Person viewer() {
        return signedIn.require();
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    private void draw() {
        main.removeAll();
        side.removeAll();
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-figures");
        table.getElement().setAttribute("aria-label", getPageTitle());
        var head = new NativeTableRow();
        for (var column : List.of("what", "counts", "shipped", "act")) {
            var cell = new NativeTableHeaderCell(say("caseload.figure.column." + column));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        var rules = figures.all(viewer()).stream()
                .collect(
                        Collectors.groupingBy(value -> value.figure().rule(), LinkedHashMap::new, Collectors.toList()));
        rules.forEach((rule, values) -> {
            table.getBody().add(rule(rule));
            values.forEach(value -> table.getBody().add(row(value)));
        });
        main.add(table, history());
        side.add(Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("caseload.figure.pick")),
                Tags.p("hw-quiet", say("caseload.figure.pick.hint"))));
    }

    private NativeTableRow rule(Rule rule) {
        var cell = new NativeTableCell(
                Tags.span("hw-b", say("caseload.figure.rule." + rule)),
                Tags.p("hw-sub", say("caseload.figure.source." + rule)));
        cell.getElement().setAttribute("colspan", "4");
        var row = new NativeTableRow(cell);
        row.addClassName("band");
        return row;
    }

    private NativeTableRow row(Value value) {
        var act = Tags.button("text u-short", say("caseload.figure.change"), pressed -> open(value));
        act.setAriaLabel(say("caseload.figure.change.of", name(value.figure())));
        var counts = Tags.span(value.own().isPresent() ? "hw-b hw-num" : "hw-num", String.valueOf(value.counts()));
        var own = value.own()
                .map(said -> Tags.p("hw-sub", since(said, people(List.of(said)))))
                .orElseGet(() -> Tags.p("", ""));
        return new NativeTableRow(
                new NativeTableCell(Tags.span("", name(value.figure()))),
                new NativeTableCell(counts, own),
                new NativeTableCell(Tags.span("hw-num", String.valueOf(value.shipped()))),
                new NativeTableCell(act));
    }

    private String name(Figure figure) {
        return say("caseload.figure.name." + figure);
    }

    private void open(Value value) {
        side.removeAll();
        var number = new IntegerField(say(
                "caseload.figure.number", value.figure().least(), value.figure().most()));
        number.setValue(value.counts());
        number.setManualValidation(true);
        number.setStepButtonsVisible(true);
        var reason = new TextArea(say("caseload.figure.reason"));
        reason.setMaxLength(NeedFigures.REASON_MAX);
        reason.setManualValidation(true);
        reason.setWidthFull();
        var acts = Tags.div("u-row u-end", Tags.button("plain", say("caseload.figure.leave"), pressed -> draw()));
        if (value.own().isPresent()) {
            acts.add(Tags.button(
                    "plain",
                    say("caseload.figure.back", value.shipped()),
                    pressed -> act(
                            number,
                            reason,
                            () -> figures.takeBack(viewer(), value.figure(), reason.getValue(), value.version()))));
        }
        acts.add(Tags.button(
                "main",
                say("caseload.figure.save"),
                pressed -> act(
                        number,
                        reason,
                        () -> figures.say(
                                viewer(),
                                value.figure(),
                                // an empty field lies out of bounds, which says what is asked for
                                Optional.ofNullable(number.getValue()).orElse(-1),
                                reason.getValue(),
                                value.version()))));
        var form = Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", name(value.figure())),
                Tags.p(
                        "hw-quiet hw-s",
                        say("caseload.figure.rule." + value.figure().rule())),
                number,
                reason,
                acts);
        side.add(form);
        form.scrollIntoView();
        number.focus();
    }

    private void act(IntegerField number, TextArea reason, Runnable work) {
        try {
            work.run();
            Told.done(say("caseload.figure.saved"));
            draw();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of("number", number, "reason", reason), words, language);
        } catch (Overtaken overtaken) {
            Told.couldNot(say("caseload.figure.overtaken"));
            draw();
        }
    }

    private Component history() {
        var all = figures.history(viewer());
        var people = people(all);
        var list = Tags.div("hw-sheet", Tags.h2("hw-kind", say("caseload.figure.history")));
        if (all.isEmpty()) {
            list.add(Tags.p("hw-quiet", say("caseload.figure.history.none")));
        }
        all.forEach(said -> list.add(Tags.div(
                "hw-value-row",
                Tags.div(
                        "",
                        Tags.p(
                                "",
                                said.number()
                                        .map(number -> say(
                                                "caseload.figure.history.line",
                                                rule(said),
                                                name(said.figure()),
                                                said.before(),
                                                number))
                                        .orElseGet(() -> say(
                                                "caseload.figure.history.back",
                                                rule(said),
                                                name(said.figure()),
                                                said.before()))),
                        Tags.p("hw-sub", since(said, people)),
                        Tags.p("", said.reason())))));
        return list;
    }

    private String rule(Said said) {
        return say("caseload.figure.rule." + said.figure().rule());
    }

    private Map<AccountId, Account> people(List<Said> all) {
        return accounts.byId(viewer(), all.stream().map(Said::by).collect(Collectors.toSet()));
    }

    private String since(Said said, Map<AccountId, Account> people) {
        var by = Optional.ofNullable(people.get(said.by())).map(Account::name).orElse("–");
        return say(
                "caseload.figure.since",
                words.dateWithYear(language, said.at().atZone(settings.zone()).toLocalDate()),
                by);
    }
}
