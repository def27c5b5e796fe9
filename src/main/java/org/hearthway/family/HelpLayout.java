package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.RouterLayout;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.Accounts;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** The frame around a helper's pages: whom this person helps, in which language, and nothing else of the family's. */
@Layout("help")
@JsModule(Draft.SCRIPT)
@JsModule("context://offline/session-send.js")
@RolesAllowed("HELPER")
class HelpLayout extends Div implements RouterLayout, AfterNavigationObserver {

    private final transient Readers readers;
    private final transient Accounts accounts;
    private final Div top = Tags.div("hw-top");
    private final Div demo = Tags.div("hw-demo");
    private final Main page = new Main();
    private final Anchor skip = new Anchor();

    HelpLayout(Readers readers, Accounts accounts, ClinicSettings clinic) {
        this.readers = readers;
        this.accounts = accounts;
        page.setId("main");
        page.getElement().setAttribute("tabindex", "-1");
        skip.addClassName("hw-skip");
        skip.setRouterIgnore(true);
        demo.setVisible(clinic.demo());
        add(skip, new Header(demo, Tags.div("hw-frame", top)), Tags.div("hw-family", page));
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        page.getElement().removeAllChildren();
        page.getElement().appendChild(content.getElement());
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        skip.setHref(event.getLocation().getPathWithQueryParameters() + "#main");
        if (event.getActiveChain().get(0) instanceof FamilyPage helping) {
            dress(helping);
        }
    }

    private void dress(FamilyPage helping) {
        var reader = helping.reader();
        skip.setText(reader.say("family.skip"));
        demo.setText(reader.say("family.demo"));
        top.removeAll();
        if (helping.below().isPresent()) {
            var back = Tags.link("hw-round u-back", reader.address("today"), Icon.BACK.draw());
            back.getElement().setAttribute("aria-label", reader.say("family.back.today"));
            top.add(back, Tags.span("hw-b hw-below", helping.below().orElseThrow()), Tags.span("grow", ""));
        } else {
            top.add(child(reader), Tags.span("grow", ""), FamilyLayout.otherLanguage(reader, readers, accounts));
        }
        FamilyLayout.tell(reader.language());
    }

    private Component child(Reader reader) {
        var initial = Tags.span("hw-initial", reader.name().substring(0, 1));
        initial.getElement().setAttribute("aria-hidden", "true");
        var summary = Bits.el(
                "summary", "hw-child", initial, Tags.span("hw-child-name", reader.name()), Icon.DOWN.draw("sm"));
        summary.getElement().setAttribute("aria-label", reader.say("family.switch.name", reader.name()));
        var list = Bits.el("ul", "hw-menu");
        readers.helped(reader.viewer()).stream()
                .filter(other -> !other.id().equals(reader.id()))
                .forEach(other -> list.add(Bits.el(
                        "li",
                        "",
                        Tags.link("", "help/" + other.id() + "/today", reader.say("family.switch.to", other.name())))));
        list.add(Bits.el("li", "", FamilyLayout.out(reader)));
        return Bits.el("details", "hw-who", summary, list);
    }
}
