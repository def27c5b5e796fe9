package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasStyle;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.NativeButton;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** A button that reads the page aloud with the voice of the phone itself; it shows only where there is such a voice. */
@Tag("hw-aloud")
@JsModule("context://offline/aloud.js")
final class Aloud extends Component implements HasStyle {

    /** Reads the whole page. */
    Aloud(Reader reader) {
        this(reader, "main", "family.aloud.start", Icon.PLAY.draw("sm"), "");
    }

    /** Reads one part of the page; the button shows a picture and is named by the key. */
    Aloud(Reader reader, String of, String start) {
        this(reader, of, start, Icon.VOICE.draw(), "hw-vh");
        addClassName("picture");
    }

    private Aloud(Reader reader, String of, String start, Component icon, String words) {
        getElement()
                .setAttribute("of", of)
                .setAttribute("start", reader.say(start))
                .setAttribute("stop", reader.say("family.aloud.stop"));
        var button = new NativeButton();
        button.addClassNames("hw-button", "plain");
        button.getElement().setAttribute("type", "button").setAttribute("aria-pressed", "false");
        button.add(icon, Tags.span(words, reader.say(start)));
        getElement().appendChild(button.getElement());
    }
}
