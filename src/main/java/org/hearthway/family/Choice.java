package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A few buttons of which at most one is pressed; pressing it again lets it go. */
final class Choice<T> extends Div {

    private final Map<T, NativeButton> buttons = new LinkedHashMap<>();
    private transient Optional<T> chosen = Optional.empty();
    private transient Runnable changed = () -> {};

    private Choice() {}

    /** Buttons whose words stand under the key followed by the value, each with what is drawn over its word. */
    static <T> Choice<T> of(
            Reader reader,
            String name,
            String key,
            List<T> options,
            String style,
            Function<T, Optional<Component>> drawn) {
        var choice = new Choice<T>();
        choice.addClassName(style);
        choice.getElement().setAttribute("role", "group");
        choice.getElement().setAttribute("aria-label", reader.say(name));
        for (var option : options) {
            var button = new NativeButton();
            if (style.equals("hw-chips")) {
                button.addClassName("hw-chip");
            }
            button.getElement().setAttribute("type", "button");
            drawn.apply(option).ifPresent(button::add);
            button.add(new Span(reader.large(reader.say(key + option, reader.name()))));
            button.addClickListener(pressed -> choice.press(option));
            choice.buttons.put(option, button);
            choice.add(button);
        }
        choice.choose(Optional.empty());
        return choice;
    }

    private void press(T option) {
        choose(chosen.filter(option::equals).isPresent() ? Optional.empty() : Optional.of(option));
        changed.run();
    }

    void choose(Optional<T> option) {
        chosen = option;
        buttons.forEach(
                (each, button) -> Bits.press(button, option.filter(each::equals).isPresent()));
    }

    Optional<T> chosen() {
        return chosen;
    }

    void onChange(Runnable listener) {
        changed = listener;
    }
}
