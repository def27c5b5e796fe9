package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.NativeButton;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** A button that reads the page aloud with the voice of the phone itself; it shows only where there is such a voice. */
@Tag("hw-aloud")
@JsModule("context://offline/aloud.js")
final class Aloud extends Component {

    Aloud(Reader reader) {
        getElement()
                .setAttribute("of", "main")
                .setAttribute("start", reader.say("family.aloud.start"))
                .setAttribute("stop", reader.say("family.aloud.stop"));
        var button = new NativeButton();
        button.addClassNames("hw-button", "plain");
        button.getElement().setAttribute("type", "button").setAttribute("aria-pressed", "false");
        button.add(Icon.PLAY.draw("sm"), Tags.span("", reader.say("family.aloud.start")));
        getElement().appendChild(button.getElement());
    }
}
