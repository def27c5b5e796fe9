package org.hearthway.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.server.HttpStatusCode;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The page for a failure on our side: a reference number, the numbers to call, never a trace. */
@AnonymousAllowed
class TroublePage extends Div implements HasErrorParameter<Exception>, HasDynamicTitle {

    private final transient Words words;
    private final transient ClinicSettings clinic;

    TroublePage(Words words, ClinicSettings clinic) {
        this.words = words;
        this.clinic = clinic;
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<Exception> parameter) {
        var reference = Trouble.note(parameter.getException());
        var language = Language.of(UI.getCurrent().getLocale());
        removeAll();
        addClassNames("hw-family", "hw-apology");
        getElement().setAttribute("role", "main");
        add(
                Tags.h1(words.say(language, "shell.trouble")),
                Tags.p("", words.say(language, "shell.trouble.kept")),
                Tags.p("hw-quiet", words.say(language, "shell.trouble.reference", reference)),
                Tags.p("", words.say(language, "shell.trouble.call", clinic.urgentLine(), clinic.emergencyNumber())));
        return HttpStatusCode.INTERNAL_SERVER_ERROR.getCode();
    }

    @Override
    public String getPageTitle() {
        return words.say(Language.of(UI.getCurrent().getLocale()), "shell.trouble");
    }
}
