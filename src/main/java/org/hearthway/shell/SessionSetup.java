package org.hearthway.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.CustomizedSystemMessages;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SystemMessagesInfo;
import com.vaadin.flow.server.VaadinServiceInitListener;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Gives every session the person's language, its words for lost sessions, and an error handler that shows no trace. */
@Component
class SessionSetup implements VaadinServiceInitListener {

    private final transient Words words;
    private final transient SignedIn signedIn;

    private static final String BACK =
            "const shown = window.Vaadin.connectionIndicator; if (shown) shown.onlineText = $0;";

    SessionSetup(Words words, SignedIn signedIn) {
        this.words = words;
        this.signedIn = signedIn;
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().setSystemMessagesProvider(this::systemMessages);
        event.getSource().addSessionInitListener(start -> start.getSession().setErrorHandler(this::handle));
        event.getSource()
                .addUIInitListener(start -> signedIn.person()
                        .map(Viewer.Person::language)
                        .ifPresent(language -> {
                            start.getUI().setLocale(language.locale());
                            network(start.getUI(), language);
                        }));
    }

    /** What stands at the top while the network is away, and for a moment when it is back. */
    private void network(UI ui, Language language) {
        var lost = ui.getReconnectDialogConfiguration();
        lost.setDialogText(words.say(language, "shell.network.lost"));
        lost.setDialogTextGaveUp(words.say(language, "shell.network.gone"));
        ui.getPage().executeJs(BACK, words.say(language, "shell.network.back"));
    }

    private CustomizedSystemMessages systemMessages(SystemMessagesInfo info) {
        var language = Language.of(info.getLocale());
        var messages = new CustomizedSystemMessages();
        messages.setSessionExpiredNotificationEnabled(true);
        messages.setSessionExpiredCaption(words.say(language, "shell.session.expired"));
        messages.setSessionExpiredMessage(words.say(language, "shell.session.again"));
        messages.setSessionExpiredURL("./");
        messages.setInternalErrorCaption(words.say(language, "shell.trouble"));
        messages.setInternalErrorMessage(words.say(language, "shell.session.again"));
        messages.setCookiesDisabledCaption(words.say(language, "shell.session.cookies"));
        return messages;
    }

    private void handle(ErrorEvent event) {
        var ui = UI.getCurrent();
        if (ui == null) {
            Trouble.note(event.getThrowable());
            return;
        }
        var language = Language.of(ui.getLocale());
        var cause = event.getThrowable();
        if (cause instanceof NotAvailable) {
            Told.couldNot(words.say(language, "shell.not-available"));
        } else if (cause instanceof Overtaken) {
            Told.couldNot(words.say(language, "shell.overtaken"));
        } else if (cause instanceof Invalid invalid) {
            Told.couldNot(words.say(language, invalid.problems().get(0)));
        } else {
            var reference = Trouble.note(cause);
            Told.couldNot(words.say(language, "shell.trouble") + " "
                    + words.say(language, "shell.trouble.reference", reference));
        }
    }
}
