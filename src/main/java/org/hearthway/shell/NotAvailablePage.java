package org.hearthway.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.server.HttpStatusCode;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The page for what does not exist and for what is not this person's: the same words, nothing to learn from it. */
@AnonymousAllowed
class NotAvailablePage extends Div implements HasErrorParameter<NotAvailable>, HasDynamicTitle {

    private final transient Words words;

    NotAvailablePage(Words words) {
        this.words = words;
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotAvailable> parameter) {
        show(this, words);
        return HttpStatusCode.NOT_FOUND.getCode();
    }

    @Override
    public String getPageTitle() {
        return title(words);
    }

    static String title(Words words) {
        return words.say(Language.of(com.vaadin.flow.component.UI.getCurrent().getLocale()), "shell.not-available");
    }

    static void show(Div page, Words words) {
        var ui = com.vaadin.flow.component.UI.getCurrent();
        var language = Language.of(ui.getLocale());
        // asked twice where a page forwards to another
        page.removeAll();
        page.addClassNames("hw-family", "hw-apology");
        page.getElement().setAttribute("role", "main");
        page.add(
                Tags.h1(words.say(language, "shell.not-available")),
                Tags.p("hw-quiet", words.say(language, "shell.not-available.way-out")));
        var home = new com.vaadin.flow.component.html.Anchor("./", words.say(language, "shell.home"));
        home.addClassNames("hw-button", "main");
        home.setRouterIgnore(true);
        var call = new com.vaadin.flow.component.html.Anchor("call", words.say(language, "shell.call"));
        call.addClassNames("hw-button", "text");
        call.setRouterIgnore(true);
        page.add(Tags.div("u-row", home, call));
    }
}
