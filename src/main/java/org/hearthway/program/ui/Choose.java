package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** The browser's own list to choose one of a few: small, quick by keys, and known to every machine that reads aloud. */
@Tag("select")
final class Choose extends Component {

    private static final String VALUE = "value";

    <T> Choose(String label, List<T> choices, T chosen, Function<T, String> words, Consumer<T> taken) {
        getElement().setAttribute("aria-label", label).getClassList().add("hw-choose");
        for (int i = 0; i < choices.size(); i++) {
            var option = new Element("option").setText(words.apply(choices.get(i)));
            option.setAttribute(VALUE, String.valueOf(i));
            option.setAttribute("selected", choices.get(i).equals(chosen));
            getElement().appendChild(option);
        }
        getElement().addPropertyChangeListener(VALUE, "change", change -> {
            // what comes from a browser may be anything
            var at = getElement().getProperty(VALUE, "");
            if (at.matches("\\d{1,3}") && Integer.parseInt(at) < choices.size()) {
                taken.accept(choices.get(Integer.parseInt(at)));
            }
        });
    }
}
