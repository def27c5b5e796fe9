package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.textfield.TextArea;

/**
 * Keeps what is being typed in this browser until it is saved, so that a lost session or a dead signal does not take
 * it: for one person, one child and one form, for a week, until that person signs out.
 */
@Tag("hw-draft")
@JsModule(Draft.SCRIPT)
final class Draft extends Component {

    /** Where the browser's part stands. */
    static final String SCRIPT = "context://offline/draft.js";

    private static final String FORGET = "try { localStorage.removeItem('hw-draft|' + $0); } catch (refused) {}";

    private final String name;

    /**
     * Puts a text area into its keeping.
     *
     * @param form names the form among those of the child
     */
    Draft(Reader reader, String form, TextArea area) {
        name = reader.viewer().account() + "|" + reader.id() + "|" + form;
        getElement().setAttribute("name", name);
        getElement().setAttribute("kept", reader.say("family.draft.kept"));
        getElement().appendChild(area.getElement());
    }

    /** Lets this person's drafts end with the press of a link that signs out. */
    static void goWith(Anchor out, Reader reader) {
        out.getElement().setAttribute("data-drafts", reader.viewer().account() + "|");
    }

    /** The words are saved elsewhere now. */
    void forget() {
        UI.getCurrent().getPage().executeJs(FORGET, name);
    }
}
