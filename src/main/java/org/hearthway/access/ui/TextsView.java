package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Every text that families read, in both languages, with its source and reviewers; accepting one or several. */
@Route("staff/clinic/texts")
@RolesAllowed("ADMINISTRATOR")
class TextsView extends ClinicPage {

    private final transient SignOff signOff;
    private final transient People people;
    private final transient ClinicSettings clinic;
    private final transient Map<SignOff.Item, Checkbox> boxes = new LinkedHashMap<>();
    private final NativeButton accept;

    TextsView(SignOff signOff, Accounts accounts, ClinicSettings clinic, Words words, SignedIn signedIn) {
        super("texts", words, signedIn);
        this.signOff = signOff;
        this.people = new People(accounts);
        this.clinic = clinic;
        accept = Tags.button("main wide", "", pressed -> acceptChosen());
        accept.setId("accept");
        list();
    }

    private void list() {
        boxes.clear();
        main.removeAll();
        side.removeAll();
        var accepted = new HashMap<SignOff.Item, SignOff.Acceptance>();
        signOff.accepted(viewer()).forEach(each -> accepted.put(each.item(), each));
        var kind = "";
        for (var text : signOff.all(viewer())) {
            if (!text.item().kind().equals(kind)) {
                kind = text.item().kind();
                main.add(Tags.h2("hw-kind", say("access.kind." + kind)));
            }
            main.add(line(text, Optional.ofNullable(accepted.get(text.item()))));
        }
        var all = new Checkbox(
                say("access.texts.all", boxes.size()),
                change -> boxes.values().forEach(box -> box.setValue(change.getValue())));
        if (boxes.isEmpty()) {
            side.add(Tags.div("hw-sheet hw-side-form", Tags.p("", say("access.texts.none-waits"))));
            return;
        }
        side.add(Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.texts.accept")),
                Tags.p("", say(clinic.demo() ? "access.texts.demo" : "access.texts.hidden")),
                Tags.p("hw-quiet", say("access.texts.name", viewer().name())),
                all,
                accept));
        count();
    }

    private Component line(FamilyText text, Optional<SignOff.Acceptance> acceptance) {
        var title = text.title().in(language);
        var row = Tags.div("hw-text");
        if (acceptance.isEmpty()) {
            var box = new Checkbox();
            box.setAriaLabel(say("access.texts.choose", title));
            box.addValueChangeListener(change -> count());
            boxes.put(text.item(), box);
            row.add(box);
        } else {
            row.add(Tags.span("hw-tick-gap", ""));
        }
        var details = new NativeDetails(
                Tags.span("", Tags.span("kidn", title), Tags.span("hw-sub", " " + state(text, acceptance))),
                body(text));
        row.add(details);
        return row;
    }

    private String state(FamilyText text, Optional<SignOff.Acceptance> acceptance) {
        var version = text.provenance().version();
        return acceptance
                .map(a -> say(
                        "access.texts.accepted",
                        version,
                        people.name(viewer(), a.by()),
                        LocalDate.ofInstant(a.at(), clinic.zone())))
                .orElseGet(() -> say("access.texts.open", version));
    }

    private Component body(FamilyText text) {
        var body = Tags.div("hw-text-body");
        body.add(both(text.title()));
        text.texts().forEach(each -> body.add(both(each)));
        var provenance = text.provenance();
        body.add(Tags.p("hw-s hw-quiet", say("access.texts.source", provenance.source())));
        for (var each : Language.values()) {
            body.add(Tags.p("hw-s hw-quiet", reviewed(provenance, each)));
        }
        return body;
    }

    private static Div both(Bilingual text) {
        var pair = Tags.div("hw-both");
        for (var each : Language.values()) {
            var side = Tags.p("", text.in(each));
            side.getElement().setAttribute("lang", each.tag());
            pair.add(side);
        }
        return pair;
    }

    private String reviewed(Provenance provenance, Language of) {
        var name = say("access.language." + of.name());
        return provenance
                .review(of)
                .map(review -> say("access.texts.reviewed", name, review.by(), review.on()))
                .orElseGet(() -> say("access.texts.not-reviewed", name));
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
        list();
    }
}
