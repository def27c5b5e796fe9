package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;

/** Small pieces that family pages are made of. */
final class Bits {

    private Bits() {}

    /** An element with words. */
    static HtmlContainer el(String tag, String classes, String words) {
        var element = el(tag, classes);
        element.getElement().setText(words);
        return element;
    }

    /** An element with children. */
    static HtmlContainer el(String tag, String classes, Component... children) {
        var element = new HtmlContainer(tag);
        if (!classes.isBlank()) {
            element.addClassNames(classes.strip().split(" +"));
        }
        element.add(children);
        return element;
    }

    /** A small stone that repeats what the words beside it say. */
    static Span pip(String state) {
        var pip = Tags.span(("hw-pip " + state).strip(), "");
        pip.getElement().setAttribute("aria-hidden", "true");
        return pip;
    }

    /** A strip of news, caution or a remark. */
    static HtmlContainer strip(String kind, Icon icon, Component words) {
        var strip = el("div", ("hw-strip " + kind).strip(), icon.draw(), words);
        strip.getElement().setAttribute("role", "note");
        return strip;
    }

    /** A strip with plain words. */
    static HtmlContainer strip(String kind, Icon icon, String words) {
        return strip(kind, icon, Tags.div("", Tags.span("", words)));
    }

    /** Words that begin with a few strong ones. */
    static Component led(String strong, String words) {
        return Tags.div("", el("b", "", strong), Tags.span("", " " + words));
    }

    /** The title of a page with the small line over it. */
    static Component hero(String over, String title, Component... below) {
        var hero = Tags.div("hw-hero u-pb3", Tags.p("when", over), el("h1", "u-2xl", title));
        hero.add(below);
        return hero;
    }

    /** Says whether a button is pressed. */
    static void press(NativeButton button, boolean pressed) {
        button.getElement().setAttribute("aria-pressed", String.valueOf(pressed));
    }
}
