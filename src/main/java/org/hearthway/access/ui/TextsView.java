package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * Every text that families read, in both languages, with its source and reviewers: accepting one or several, sending one
 * back, the clinic's own words, and what families do not see now.
 */
@Route("staff/clinic/texts")
@RolesAllowed("ADMINISTRATOR")
class TextsView extends ClinicPage {

    /** So many names fit above the list without pushing it away. */
    private static final int FEW = 6;

    private final transient SignOff signOff;
    private final transient People people;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient Map<SignOff.Item, Checkbox> boxes = new LinkedHashMap<>();
    private final transient Map<SignOff.Item, NativeDetails> rows = new LinkedHashMap<>();
    private final NativeButton accept;

    TextsView(SignOff signOff, Accounts accounts, ClinicSettings clinic, Clock clock, Words words, SignedIn signedIn) {
        super("texts", words, signedIn);
        addClassName("hw-clinic-texts");
        this.signOff = signOff;
        this.people = new People(accounts);
        this.clinic = clinic;
        this.clock = clock;
        accept = Tags.button("main wide", "", pressed -> attempt(this::acceptChosen));
        accept.setId("accept");
        list(null);
    }

    private void list(SignOff.@Nullable Item open) {
        boxes.clear();
        rows.clear();
        main.removeAll();
        side.removeAll();
        var all = TextState.all(signOff, viewer(), clinic.zone());
        gaps(all.stream().filter(state -> !state.isAccepted()).toList());
        var kind = "";
        for (var state : all) {
            if (!state.text().item().kind().equals(kind)) {
                kind = state.text().item().kind();
                main.add(Tags.h2("hw-kind", say("access.kind." + kind)));
            }
            main.add(line(state));
        }
        acceptance();
        summary(all);
        if (open != null) {
            show(open);
        }
    }

    /** What families do not see, by name. */
    private void gaps(List<TextState> hidden) {
        if (hidden.isEmpty()) {
            return;
        }
        var names = Tags.div("");
        hidden.stream()
                .collect(Collectors.groupingBy(state -> state.text().item().kind(), TreeMap::new, Collectors.toList()))
                .forEach((kind, states) -> {
                    var list = Tags.div("hw-gaps");
                    states.forEach(state -> list.add(Tags.bare(
                            "hw-gap",
                            state.shown(0).in(language),
                            pressed -> show(state.text().item()))));
                    names.add(Tags.p("hw-s hw-quiet", say("access.kind." + kind)), list);
                });
        var gaps = new NativeDetails(
                Tags.span("kidn", say(clinic.demo() ? "access.texts.gaps.demo" : "access.texts.gaps", hidden.size())),
                names);
        gaps.addClassNames("hw-banner", "hw-text-gaps");
        gaps.setOpen(hidden.size() <= FEW);
        main.add(gaps);
    }

    private void show(SignOff.Item item) {
        var row = rows.get(item);
        if (row != null) {
            row.setOpen(true);
            fill(row, item);
            row.scrollIntoView();
        }
    }

    private void acceptance() {
        if (boxes.isEmpty()) {
            side.add(Tags.div("hw-sheet hw-side-form", Tags.p("", say("access.texts.none-waits"))));
            return;
        }
        var all = new Checkbox(
                say("access.texts.all", boxes.size()),
                change -> boxes.values().forEach(box -> box.setValue(change.getValue())));
        side.add(Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.texts.accept")),
                Tags.p("", say(clinic.demo() ? "access.texts.demo" : "access.texts.hidden")),
                Tags.p("hw-quiet", say("access.texts.name", viewer().name())),
                all,
                accept));
        count();
    }

    private void summary(List<TextState> all) {
        var today = LocalDate.now(clock.withZone(clinic.zone()));
        side.add(Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.texts.sums")),
                Tags.p("", say("access.texts.sum.accepted", sum(all, TextState::isAccepted), all.size())),
                Tags.p("", say("access.texts.sum.back", sum(all, TextState::isSentBack))),
                Tags.p("", say("access.texts.sum.own", sum(all, TextState::hasOwnWords))),
                Tags.p("", say("access.texts.sum.due", sum(all, state -> state.isDue(today))))));
    }

    private static long sum(List<TextState> all, Predicate<TextState> which) {
        return all.stream().filter(which).count();
    }

    private Component line(TextState state) {
        var item = state.text().item();
        var title = state.shown(0).in(language);
        var row = Tags.div("hw-text");
        if (state.decision().isEmpty()) {
            var box = new Checkbox();
            box.setAriaLabel(say("access.texts.choose", title));
            box.addValueChangeListener(change -> count());
            boxes.put(item, box);
            row.add(box);
        } else {
            row.add(Tags.span("hw-tick-gap", ""));
        }
        var details = new NativeDetails(
                Tags.span(
                        "",
                        Tags.span("kidn", title),
                        Tags.span("hw-sub hw-text-state " + mark(state), stateOf(state)),
                        Tags.span("hw-sub", state.hasOwnWords() ? say("access.texts.own") : "")),
                new Div());
        details.addToggleListener(toggled -> fill(details, item));
        rows.put(item, details);
        row.add(details);
        return row;
    }

    private static String mark(TextState state) {
        if (state.isAccepted()) {
            return "hw-account-state active";
        }
        return state.isSentBack() ? "hw-account-state disabled" : "hw-account-state";
    }

    private String stateOf(TextState state) {
        var version = state.text().provenance().version();
        if (state.decision().isEmpty()) {
            return say("access.texts.open", version);
        }
        var last = state.decision().get();
        var on = LocalDate.ofInstant(last.at(), clinic.zone());
        var day = words.dateWithYear(language, on);
        var by = people.name(viewer(), last.by());
        if (state.isSentBack()) {
            return say("access.texts.back", version, by, day);
        }
        var due = words.dateWithYear(language, state.due().orElse(on));
        return say("access.texts.accepted", version, by, day)
                + " · "
                + say(
                        state.isDue(LocalDate.now(clock.withZone(clinic.zone())))
                                ? "access.texts.overdue"
                                : "access.texts.due",
                        due);
    }

    /** Draws a text when it is opened: eighty of them at once would be long to draw and to send. */
    private void fill(NativeDetails row, SignOff.Item item) {
        if (row.isOpen() && !(row.getContent() instanceof TextBody)) {
            TextState.all(signOff, viewer(), clinic.zone()).stream()
                    .filter(state -> state.text().item().equals(item))
                    .findFirst()
                    .ifPresent(state -> row.setContent(
                            new TextBody(state, this, signOff, people, clinic.zone(), () -> list(item))));
        }
    }

    private void count() {
        var chosen = boxes.values().stream().filter(Checkbox::getValue).count();
        accept.setText(say("access.texts.go", chosen));
        accept.setEnabled(chosen > 0);
    }

    private void acceptChosen() {
        var chosen = boxes.entrySet().stream()
                .filter(entry -> entry.getValue().getValue())
                .map(Map.Entry::getKey)
                .toList();
        signOff.accept(viewer(), chosen);
        Told.done(say("access.texts.done", chosen.size()));
        list(null);
    }
}
