package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.RouterLayout;
import jakarta.annotation.security.PermitAll;
import java.util.Arrays;
import org.hearthway.access.Accounts;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** The frame around the family's pages: whose child, which language, notes, and the five places within the thumb's reach. */
@Layout("my")
@JsModule(Draft.SCRIPT)
@JsModule("context://offline/session-send.js")
@PermitAll
public class FamilyLayout extends Div implements RouterLayout, AfterNavigationObserver {

    private final transient Readers readers;
    private final transient Accounts accounts;
    private final Div top = Tags.div("hw-top");
    private final Main page = new Main();
    private final Nav places = new Nav();
    private final Anchor skip = new Anchor();
    private final Div demo = Tags.div("hw-demo");
    private final Div pause = Tags.div("hw-frame");
    private final transient Pause pauses;
    private final boolean isDemo;

    FamilyLayout(Readers readers, Accounts accounts, Pause pauses, ClinicSettings clinic) {
        this.readers = readers;
        this.accounts = accounts;
        this.pauses = pauses;
        this.isDemo = clinic.demo();
        page.setId("main");
        page.getElement().setAttribute("tabindex", "-1");
        places.addClassName("hw-nav");
        skip.addClassName("hw-skip");
        skip.setRouterIgnore(true);
        demo.setVisible(isDemo);
        add(skip, new Header(demo, Tags.div("hw-frame", top), pause), Tags.div("hw-family under", page), places);
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        page.getElement().removeAllChildren();
        page.getElement().appendChild(content.getElement());
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        var shown = event.getActiveChain().get(0);
        skip.setHref(event.getLocation().getPathWithQueryParameters() + "#main");
        if (shown instanceof FamilyPage family) {
            dress(family);
        }
    }

    private void dress(FamilyPage family) {
        var reader = family.reader();
        skip.setText(reader.say("family.skip"));
        demo.setText(reader.say("family.demo"));
        top.removeAll();
        if (family.below().isPresent()) {
            var back =
                    Tags.link("hw-round u-back", reader.address(family.place().address()), Icon.BACK.draw());
            back.getElement()
                    .setAttribute(
                            "aria-label",
                            reader.say("family.back." + family.place().address()));
            top.add(back, Tags.span("hw-b hw-below", family.below().orElseThrow()), Tags.span("grow", ""));
        } else {
            top.add(child(reader), Tags.span("grow", ""), otherLanguage(reader));
        }
        top.add(notes(reader));
        pause.removeAll();
        pauses.draw(reader).ifPresent(pause::add);
        drawPlaces(reader, family.place());
        tell(reader.language());
    }

    static void tell(Language language) {
        var ui = UI.getCurrent();
        ui.setLocale(language.locale());
        ui.getPage().executeJs("document.documentElement.lang = $0", language.tag());
        ui.getPage().executeJs("document.documentElement.dataset.density = $0", "family");
    }

    private Component child(Reader reader) {
        var initial = Tags.span("hw-initial", reader.name().substring(0, 1));
        initial.getElement().setAttribute("aria-hidden", "true");
        var summary = Bits.el(
                "summary", "hw-child", initial, Tags.span("hw-child-name", reader.name()), Icon.DOWN.draw("sm"));
        summary.getElement().setAttribute("aria-label", reader.say("family.switch.name", reader.name()));
        var list = Bits.el("ul", "hw-menu");
        var mine = readers.mine(reader.viewer());
        mine.stream().filter(other -> !other.id().equals(reader.id())).forEach(other -> {
            var there = Tags.link("", "my/" + other.id() + "/today", reader.say("family.switch.to", other.name()));
            list.add(Bits.el("li", "", there));
        });
        list.add(Bits.el(
                "li", "", Tags.link("", reader.address("family"), reader.say("family.circle.title", reader.name()))));
        list.add(Bits.el("li", "", out(reader)));
        return Bits.el("details", "hw-who", summary, list);
    }

    static Anchor out(Reader reader) {
        var out = new Anchor("sign-out", reader.say("family.out"));
        out.setRouterIgnore(true);
        Draft.goWith(out, reader);
        return out;
    }

    private Component otherLanguage(Reader reader) {
        return otherLanguage(reader, readers, accounts);
    }

    static Component otherLanguage(Reader reader, Readers readers, Accounts accounts) {
        var other = Arrays.stream(Language.values())
                .filter(language -> language != reader.language())
                .findFirst()
                .orElseThrow();
        var button = Tags.button("", readers.words(other, "family.language"), pressed -> {
            accounts.speak(reader.viewer(), other);
            UI.getCurrent().getPage().reload();
        });
        button.removeClassName("hw-button");
        button.addClassName("hw-tag-lang");
        button.getElement().setAttribute("lang", other.tag());
        return button;
    }

    private static Component notes(Reader reader) {
        var notes = Tags.link("hw-round", reader.address("notes"), Icon.NOTES.draw());
        notes.getElement().setAttribute("aria-label", reader.say("family.notes.title"));
        return notes;
    }

    private void drawPlaces(Reader reader, Place here) {
        places.removeAll();
        places.getElement().setAttribute("aria-label", reader.say("family.places"));
        var list = Bits.el("ul", "");
        for (var place : Place.values()) {
            var link = Tags.link(
                    place == Place.CALL ? "call" : "",
                    reader.address(place.address()),
                    place.icon().draw(),
                    new Span(reader.say(place.key())));
            if (place == here) {
                link.getElement().setAttribute("aria-current", "page");
            }
            list.add(Bits.el("li", "", link));
        }
        places.add(list);
    }
}
