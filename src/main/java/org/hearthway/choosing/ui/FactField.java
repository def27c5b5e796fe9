package org.hearthway.choosing.ui;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Fact;
import org.hearthway.parts.Tags;

/** One fact: what holds, or that it is not known, and a note where somebody wants one. */
final class FactField extends Div {

    private final transient Fact fact;
    private final transient Optional<Select<Fact.Choice>> one;
    private final transient Optional<CheckboxGroup<Fact.Choice>> many;
    private final TextField note;

    FactField(Telling say, Fact fact, Answer.Data known, String since, boolean may, Runnable changed) {
        this.fact = fact;
        addClassName("hw-asked");
        var name = say.in(fact.name());
        var choices = fact.choices().stream()
                .filter(choice -> known.choices().contains(choice.id()))
                .collect(Collectors.toSet());
        if (fact.many()) {
            var group = new CheckboxGroup<Fact.Choice>();
            group.setItems(fact.choices());
            group.setItemLabelGenerator(choice -> say.in(choice.name()));
            group.setValue(choices);
            group.addValueChangeListener(change -> changed.run());
            group.setReadOnly(!may);
            group.setId("fact-" + fact.id());
            group.setAriaLabel(name);
            many = Optional.of(group);
            one = Optional.empty();
        } else {
            var select = new Select<Fact.Choice>();
            select.setItems(fact.choices());
            select.setItemLabelGenerator(
                    choice -> choice == null ? say.say("choosing.unknown") : say.in(choice.name()));
            select.setEmptySelectionAllowed(true);
            select.setEmptySelectionCaption(say.say("choosing.unknown"));
            choices.stream().findFirst().ifPresent(select::setValue);
            select.addValueChangeListener(change -> changed.run());
            select.setReadOnly(!may);
            select.setWidthFull();
            select.setId("fact-" + fact.id());
            select.setAriaLabel(name);
            one = Optional.of(select);
            many = Optional.empty();
        }
        note = new TextField();
        note.setValue(known.note());
        note.setReadOnly(!may);
        note.setWidthFull();
        note.setPlaceholder(say.say("choosing.note.hint"));
        note.setAriaLabel(say.say("choosing.note.of", name));
        note.setId("note-" + fact.id());
        note.addClassName("hw-asked-note");
        note.setVisible(!known.note().isEmpty());
        var open = Tags.button("text u-short", say.say("choosing.note"), pressed -> open(pressed.getSource()));
        open.getElement().setAttribute("aria-label", say.say("choosing.note.add", name));
        open.setVisible(may && known.note().isEmpty());
        add(Tags.span("hw-asked-name", name), Tags.span("hw-sub hw-asked-since", since), open);
        one.ifPresent(this::add);
        many.ifPresent(this::add);
        add(note);
    }

    private void open(NativeButton button) {
        button.setVisible(false);
        note.setVisible(true);
        note.focus();
    }

    /** The fact's identifier. */
    String fact() {
        return fact.id();
    }

    /** What stands in it now. */
    Answer.Data data() {
        var chosen = new HashSet<String>();
        one.flatMap(Select::getOptionalValue).map(Fact.Choice::id).ifPresent(chosen::add);
        many.map(CheckboxGroup::getValue).orElse(Set.of()).forEach(choice -> chosen.add(choice.id()));
        return new Answer.Data(chosen, note.getValue());
    }

    /** Where a note that cannot be taken is marked. */
    TextField note() {
        return note;
    }
}
