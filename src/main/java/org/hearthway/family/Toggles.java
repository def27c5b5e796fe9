package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.Collection;
import java.util.function.Function;
import org.hearthway.parts.Tags;

/** A few buttons, any of which may be pressed. */
final class Toggles<T> extends Div {

    /** Told when one is pressed: which, and whether it is pressed now. */
    interface Pressed<T> {
        void press(T option, boolean on);
    }

    /**
     * Buttons under a name.
     *
     * @param on those that are pressed
     * @param words what stands on each, and what it is called in full
     */
    Toggles(
            String name,
            Collection<T> options,
            Collection<T> on,
            Function<T, String> words,
            Function<T, String> full,
            Pressed<T> pressed) {
        addClassName("hw-chips");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", name);
        for (var option : options) {
            var button = new NativeButton();
            button.addClassName("hw-chip");
            button.getElement().setAttribute("type", "button");
            button.getElement().setAttribute("aria-label", full.apply(option));
            button.add(Tags.span("", words.apply(option)));
            Bits.press(button, on.contains(option));
            button.addClickListener(press -> {
                var now = !"true".equals(button.getElement().getAttribute("aria-pressed"));
                Bits.press(button, now);
                pressed.press(option, now);
            });
            add(button);
        }
    }
}
