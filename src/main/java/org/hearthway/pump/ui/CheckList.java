package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Derivation;

/** Checks one under another: pass or attention by icon and word, what came out, and what it is held against. */
final class CheckList extends UnorderedList {

    private final transient FormSay say;

    CheckList(FormSay say) {
        this.say = say;
        addClassName("hw-pump-checks");
    }

    boolean isEmpty() {
        return getChildren().findAny().isEmpty();
    }

    /**
     * A check.
     *
     * @param rule the clinic's setting that it rests on
     */
    Item check(boolean passes, String what, String result, String rule) {
        var item = new Item(what, result);
        var state = Tags.span(
                passes ? "hw-label moss" : "hw-label ember",
                (passes ? Icon.CHECK : Icon.CLASH).draw(),
                Tags.span("", say.say(passes ? "pump.form.pass" : "pump.form.attention")));
        item.head.addComponentAsFirst(state);
        item.says(rule);
        add(item);
        return item;
    }

    /** A result that nothing is held against. */
    Item told(String what, String result, String under) {
        var item = new Item(what, result);
        if (!under.isEmpty()) {
            item.says(under);
        }
        add(item);
        return item;
    }

    /** One of them. */
    final class Item extends ListItem {

        private final com.vaadin.flow.component.html.Div head = Tags.div("hw-pump-check");

        private Item(String what, String result) {
            head.add(Tags.span("what", what), Tags.span("result", result));
            add(head);
        }

        /** A line under it. */
        Item says(String words) {
            add(Tags.p("hw-sub", words));
            return this;
        }

        /** Every line of how it came about. */
        Item how(Derivation how) {
            if (!how.lines().isEmpty()) {
                add(new DerivationList(say.figures()).derivation(how));
            }
            return this;
        }

        /** Something else under it. */
        Item with(Component part) {
            add(part);
            return this;
        }
    }
}
