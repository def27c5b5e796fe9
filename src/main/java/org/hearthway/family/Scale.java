package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.hearthway.parts.Tags;

/**
 * A number from 0 to 10 under four bands. The number is what is kept; the pictures over it are ours and no validated
 * scale.
 */
class Scale extends Div {

    private static final List<String> BANDS = List.of("none", "little", "fair", "all");
    private static final int MOST = 10;

    private final List<NativeButton> cells = new ArrayList<>();
    private final Map<String, Span> bands = new LinkedHashMap<>();
    private transient Optional<Integer> chosen = Optional.empty();
    private transient Runnable changed = () -> {};

    Scale(Reader reader, String key, IntFunction<Component> picture) {
        addClassName("hw-scale");
        getElement().setAttribute("role", "group");
        var title = Tags.h2("u-l u-legend", reader.say(key + "title"));
        getElement().setAttribute("aria-label", reader.say(key + "title"));
        var faces = Tags.div("faces");
        for (int i = 0; i < BANDS.size(); i++) {
            var band = Tags.span("", picture.apply(i), new Span(reader.say(key + BANDS.get(i))));
            bands.put(BANDS.get(i), band);
            faces.add(band);
        }
        var row = Tags.div("row");
        for (int number = 0; number <= MOST; number++) {
            var rating = number;
            var cell = new NativeButton(reader.say("family.number", number), pressed -> press(rating));
            cell.getElement().setAttribute("type", "button");
            cell.getElement().setAttribute("aria-label", reader.say("family.scale.of", number, MOST));
            cells.add(cell);
            row.add(cell);
        }
        add(title, faces, row);
        choose(Optional.empty());
    }

    private void press(int rating) {
        choose(chosen.filter(r -> r == rating).isPresent() ? Optional.empty() : Optional.of(rating));
        changed.run();
    }

    final void choose(Optional<Integer> rating) {
        chosen = rating;
        for (int i = 0; i < cells.size(); i++) {
            Bits.press(cells.get(i), rating.isPresent() && rating.get() == i);
        }
        var band = rating.map(DayWords::band).orElse("");
        bands.forEach((name, span) -> span.setClassName("on", name.equals(band)));
    }

    Optional<Integer> chosen() {
        return chosen;
    }

    void onChange(Runnable listener) {
        changed = listener;
    }
}
