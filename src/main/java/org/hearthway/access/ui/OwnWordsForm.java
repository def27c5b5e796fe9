package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.content.SignOff;
import org.hearthway.content.SignOff.OwnWords;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** The clinic's own words for one piece of a text, in both languages. What was typed stays when it is refused. */
final class OwnWordsForm extends Div {

    private final transient TextState state;
    private final int place;
    private final transient ClinicPage page;
    private final transient SignOff signOff;
    private final transient People people;
    private final Div between = Tags.div("hw-banner warn");
    private final TextArea english;
    private final TextArea spanish;
    private int seen;

    OwnWordsForm(TextState state, int place, ClinicPage page, SignOff signOff, People people, Runnable changed) {
        this.state = state;
        this.place = place;
        this.page = page;
        this.signOff = signOff;
        this.people = people;
        this.seen = state.writtenAt(place);
        addClassName("hw-own-form");
        english = area(Language.EN);
        spanish = area(Language.ES);
        between.setVisible(false);
        between.getElement().setAttribute("role", "alert");
        var acts = Tags.div("hw-text-acts", Tags.button("main", page.say("access.own.save"), pressed -> save(changed)));
        if (state.ownAt(place).isPresent()) {
            acts.add(Tags.button("plain", page.say("access.own.withdraw"), pressed -> withdraw(changed)));
        }
        acts.add(Tags.button("plain", page.say("access.own.cancel"), pressed -> changed.run()));
        add(
                Tags.div("hw-original", TextBody.both(state.text().pieces().get(place))),
                between,
                Tags.div("hw-both", english, spanish),
                Tags.p("hw-s hw-quiet", page.say("access.own.note")),
                acts);
        english.focus();
    }

    private TextArea area(Language of) {
        var area = new TextArea(page.say("access.own.in", page.say("access.language." + of.name())));
        area.setValue(state.shown(place).in(of));
        area.setManualValidation(true);
        area.setWidthFull();
        area.getElement().setAttribute("lang", of.tag());
        return area;
    }

    private void save(Runnable changed) {
        try {
            signOff.reword(page.viewer(), state.text().item(), place, english.getValue(), spanish.getValue(), seen);
            Told.done(page.say("access.own.saved"));
            changed.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of("en", english, "es", spanish), page.words, page.language);
        } catch (Overtaken overtaken) {
            showWhatCameBetween();
        }
    }

    private void withdraw(Runnable changed) {
        try {
            signOff.withdraw(page.viewer(), state.text().item(), place, seen);
            Told.done(page.say("access.own.withdrawn"));
            changed.run();
        } catch (Overtaken overtaken) {
            showWhatCameBetween();
        }
    }

    /** Both are shown, what was typed stays, and the next press counts against what is shown now. */
    private void showWhatCameBetween() {
        signOff.allOwnWords(page.viewer()).stream()
                .filter(each -> each.item().equals(state.text().item()) && each.place() == place)
                .reduce((older, newer) -> newer)
                .ifPresent(this::show);
    }

    private void show(OwnWords newest) {
        seen = newest.number();
        between.removeAll();
        between.add(Tags.p("", page.say("access.own.between", people.name(page.viewer(), newest.by()))));
        between.add(TextBody.both(
                newest.words().orElseGet(() -> state.text().pieces().get(place))));
        between.setVisible(true);
    }
}
