package org.hearthway.program.ui;

import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.parts.Keys;

/** A number of a line: typed, or stepped by arrow and page keys; its former value stands struck before it. */
final class NumberCell extends Span {

    private static final int PAUSE = 350;

    private final Amount which;
    private final Input input = new Input(ValueChangeMode.LAZY);
    private final Element former = Cells.struck("");

    NumberCell(Say say, EditedLine line, Amount which, Runnable changed) {
        this.which = which;
        addClassName("hw-mini");
        input.setValueChangeTimeout(PAUSE);
        input.setValue(line.typed(which));
        input.setPlaceholder("–");
        input.getElement()
                .setAttribute("inputmode", which.step() < 1 ? "decimal" : "numeric")
                .setAttribute("autocomplete", "off")
                .setAttribute("aria-label", say.one("field", which, say.name(line.exercise())));
        input.addValueChangeListener(typed -> {
            line.type(which, typed.getValue());
            changed.run();
        });
        Keys.steps(
                input,
                which.step(),
                which.leap(),
                which.bound().min(),
                which.bound().max());
        getElement().appendChild(former);
        former.setVisible(false);
        add(input);
        getElement().appendChild(new Element("small").setText(say.one("unit", which)));
    }

    /** Shows what stands in an empty field's stead. */
    NumberCell usually(String number) {
        input.setPlaceholder(number);
        return this;
    }

    /** Names where it is told what is wrong. */
    NumberCell describedBy(String id) {
        input.getElement().setAttribute("aria-describedby", id);
        return this;
    }

    /** Lets a key of the row lead here. */
    NumberCell key(String key) {
        Keys.press(input, key);
        return this;
    }

    /** Marks it as different from the version compared with. */
    void mark(boolean differs, Optional<String> was) {
        setClassName("new", differs);
        former.setText(was.orElse(""));
        former.setVisible(was.isPresent());
    }

    /** Marks it when a problem is about it. */
    void tell(List<Problem> problems) {
        var bad = problems.stream().anyMatch(p -> p.field().endsWith("." + which.field()));
        input.getElement().setAttribute("aria-invalid", String.valueOf(bad));
        setClassName("bad", bad);
    }
}
