package org.hearthway.parts;

import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;

/** The line at the foot of a staff page that tells its keys, and brings the script that listens to them. */
@JsModule("context://parts/keys.js")
public class KeyBar extends Footer {

    /** An empty bar; below 992 px it is not shown. */
    public KeyBar() {
        addClassName("hw-keys");
    }

    /** Tells what some keys do. */
    public KeyBar tell(String words, String... keys) {
        var part = new Span();
        for (var key : keys) {
            part.getElement().appendChild(new Element("kbd").setText(key), new Element("span").setText(" "));
        }
        part.getElement().appendChild(new Element("span").setText(words));
        add(part);
        return this;
    }

    /** A remark at the far end. */
    public KeyBar remark(String words) {
        var grow = new Span();
        grow.addClassName("grow");
        add(grow, new Span(words));
        return this;
    }
}
