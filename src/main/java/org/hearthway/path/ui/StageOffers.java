package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.function.Consumer;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Template.Stage;

/** Stages that are not dated on a plan, each with the one thing that can be said of it. */
final class StageOffers extends Div {

    /**
     * Lists them.
     *
     * @param hint what they are; may be empty
     * @param says the words of each button
     */
    StageOffers(StageWords say, String title, String hint, List<Stage> stages, String says, Consumer<Stage> pressed) {
        addClassName("u-mt5");
        var list = new UnorderedList();
        list.addClassName("hw-plain");
        stages.forEach(stage -> list.add(new ListItem(
                new Span(stage.name().in(say.language()) + " "),
                Tags.button("text", says, press -> pressed.accept(stage)))));
        add(Tags.h2("u-l", title));
        if (!hint.isEmpty()) {
            add(Tags.p("hw-s hw-quiet", hint));
        }
        add(list);
    }
}
