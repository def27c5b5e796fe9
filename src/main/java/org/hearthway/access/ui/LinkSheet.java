package org.hearthway.access.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDateTime;
import org.hearthway.access.Accounts;
import org.hearthway.base.Viewer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** A link that was just made, shown this once, to be handed on. */
final class LinkSheet {

    private static final String COPY = "navigator.clipboard && navigator.clipboard.writeText($0)";

    private LinkSheet() {}

    static Div of(Accounts.Invitation invitation, String name, Viewer.Person viewer, Words words) {
        var language = viewer.language();
        var until = LocalDateTime.ofInstant(invitation.expires(), viewer.zone());
        var link = new TextField(words.say(language, "access.link.label", name));
        link.setValue(invitation.url());
        link.setReadOnly(true);
        link.setAutoselect(true);
        link.setId("fresh-link");
        link.setHelperText(words.say(language, "access.link.until", until.toLocalDate(), until.toLocalTime()));
        var copy = Tags.button("plain", Icon.CHECK, words.say(language, "access.link.copy"), pressed -> {
            UI.getCurrent().getPage().executeJs(COPY, invitation.url());
            Told.done(words.say(language, "access.link.copied"));
        });
        var sheet = Tags.div(
                "hw-sheet hw-link-sheet", link, Tags.p("hw-s", words.say(language, "access.link.hand-on")), copy);
        sheet.getElement().setAttribute("role", "status");
        return sheet;
    }
}
