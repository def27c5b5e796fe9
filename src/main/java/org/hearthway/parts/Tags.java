package org.hearthway.parts;

import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.ScrollOptions;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;

/** Short ways to write plain elements with the theme's classes; texts are always texts. */
public final class Tags {

    private Tags() {}

    /** A block with children. */
    public static Div div(String classes, Component... children) {
        return dressed(new Div(children), classes);
    }

    /** A section that is named for assistive technology. */
    public static Section section(String classes, String label, Component... children) {
        var section = dressed(new Section(children), classes);
        section.getElement().setAttribute("aria-label", label);
        return section;
    }

    /** Words in a line. */
    public static Span span(String classes, String words) {
        return dressed(new Span(words), classes);
    }

    /** A line with children. */
    public static Span span(String classes, Component... children) {
        return dressed(new Span(children), classes);
    }

    /** A paragraph. */
    public static Paragraph p(String classes, String words) {
        return dressed(new Paragraph(words), classes);
    }

    /** The page's title. */
    public static H1 h1(String words) {
        return new H1(words);
    }

    /** A section's title. */
    public static H2 h2(String classes, String words) {
        return dressed(new H2(words), classes);
    }

    /** A button with words; {@code style} is main, plain, soft or text, with big, wide. */
    public static NativeButton button(
            String style, String words, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        var button = dressed(new NativeButton(words), "hw-button " + style);
        button.getElement().setAttribute("type", "button");
        button.addClickListener(pressed);
        return button;
    }

    /** A button with an icon before its words. */
    public static NativeButton button(
            String style, Icon icon, String words, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        var button = button(style, "", pressed);
        button.removeAll();
        button.add(icon.draw(), new Span(words));
        return button;
    }

    /** A button that looks like the words around it. */
    public static NativeButton bare(
            String classes, String words, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        var button = dressed(new NativeButton(words), classes);
        button.getElement().setAttribute("type", "button");
        button.addClickListener(pressed);
        return button;
    }

    /** A small round button that shows an icon alone and is named. */
    public static NativeButton round(Icon icon, String name, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        var button = dressed(new NativeButton(), "hw-round");
        button.getElement().setAttribute("type", "button");
        button.getElement().setAttribute("aria-label", name);
        button.add(icon.draw());
        button.addClickListener(pressed);
        return button;
    }

    /** A link within the program; navigation stays in the page. */
    public static Anchor link(String classes, String address, String words) {
        var link = dressed(new Anchor(address, words), classes);
        link.getElement().setAttribute("router-link", true);
        return link;
    }

    /** A link within the program around other parts. */
    public static Anchor link(String classes, String address, Component... children) {
        var link = dressed(new Anchor(address), classes);
        link.add(children);
        link.getElement().setAttribute("router-link", true);
        return link;
    }

    /** Marks the open one of several tabs and brings it into sight: on a phone their row is longer than the screen. */
    public static void open(Anchor tab) {
        tab.getElement().setAttribute("aria-current", "page");
        tab.scrollIntoView(new ScrollOptions(
                ScrollOptions.Behavior.AUTO, ScrollOptions.Alignment.NEAREST, ScrollOptions.Alignment.CENTER));
    }

    private static <C extends Component & com.vaadin.flow.component.HasStyle> C dressed(C component, String classes) {
        if (!classes.isBlank()) {
            component.addClassNames(classes.strip().split(" +"));
        }
        return component;
    }
}
