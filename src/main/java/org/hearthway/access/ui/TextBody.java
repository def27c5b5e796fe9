package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.content.SignOff.Decided;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** One text opened: its pieces in both languages, where they come from, what was decided, and what can be done. */
final class TextBody extends Div {

    private final transient TextState state;
    private final transient ClinicPage page;
    private final transient SignOff signOff;
    private final transient People people;
    private final transient ZoneId zone;
    private final transient Runnable changed;

    TextBody(TextState state, ClinicPage page, SignOff signOff, People people, ZoneId zone, Runnable changed) {
        this.state = state;
        this.page = page;
        this.signOff = signOff;
        this.people = people;
        this.zone = zone;
        this.changed = changed;
        addClassName("hw-text-body");
        for (int place = 0; place < state.text().pieces().size(); place++) {
            add(piece(place));
        }
        add(facts(), acts());
    }

    private Div piece(int place) {
        var says = state.shown(place);
        var piece = Tags.div("hw-piece", both(says));
        var edit = Tags.button("text", page.say("access.own.write"), pressed -> {
            piece.removeAll();
            piece.add(form(place));
        });
        edit.getElement().setAttribute("aria-label", page.say("access.own.write-this", says.in(page.language)));
        piece.add(edit);
        state.ownAt(place)
                .ifPresent(own -> piece.add(Tags.div(
                        "hw-original",
                        Tags.p("hw-s", page.say("access.own.by", people.name(page.viewer(), own.by()), day(own.at()))),
                        both(state.text().pieces().get(place)))));
        return piece;
    }

    private String day(Instant at) {
        return page.words.dateWithYear(page.language, LocalDate.ofInstant(at, zone));
    }

    private Component form(int place) {
        return new OwnWordsForm(state, place, page, signOff, people, changed);
    }

    static Div both(Bilingual text) {
        var pair = Tags.div("hw-both");
        for (var each : Language.values()) {
            var side = Tags.p("", text.in(each));
            side.getElement().setAttribute("lang", each.tag());
            pair.add(side);
        }
        return pair;
    }

    private Div facts() {
        var provenance = state.text().provenance();
        var facts = Tags.div("hw-text-facts", quiet(page.say("access.texts.source", provenance.source())));
        for (var each : Language.values()) {
            facts.add(quiet(reviewed(provenance, each)));
        }
        state.due()
                .ifPresent(day -> facts.add(
                        quiet(page.say("access.texts.look-again", page.words.dateWithYear(page.language, day)))));
        for (var each : state.decisions()) {
            var by = people.name(page.viewer(), each.by());
            var day = day(each.at());
            facts.add(quiet(
                    each.decided() == Decided.ACCEPTED
                            ? page.say("access.texts.was-accepted", by, day)
                            : page.say("access.texts.was-sent-back", by, day, each.reason())));
        }
        return facts;
    }

    private static Component quiet(String says) {
        return Tags.p("hw-s hw-quiet", says);
    }

    private String reviewed(Provenance provenance, Language of) {
        var name = page.say("access.language." + of.name());
        return provenance
                .review(of)
                .map(review -> page.say(
                        "access.texts.reviewed",
                        name,
                        review.by(),
                        page.words.dateWithYear(page.language, review.on())))
                .orElseGet(() -> page.say("access.texts.not-reviewed", name));
    }

    private Div acts() {
        var acts = Tags.div("hw-text-acts");
        var seen = state.decision().map(SignOff.Decision::number).orElse(0);
        if (!state.isAccepted()) {
            acts.add(Tags.button(
                    "main",
                    page.say("access.texts.accept-this"),
                    pressed -> page.attempt(() -> {
                        signOff.accept(page.viewer(), state.text().item(), seen);
                        Told.done(page.say("access.texts.done", 1));
                        changed.run();
                    })));
        }
        if (!state.isSentBack()) {
            acts.add(Tags.button("plain", page.say("access.texts.send-back"), pressed -> {
                acts.removeAll();
                acts.add(new SendBackForm(state, page, signOff, changed));
            }));
        }
        return acts;
    }
}
