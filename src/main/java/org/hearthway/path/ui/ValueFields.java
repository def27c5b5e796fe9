package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.ClinicValues.Value;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValuePlace.Kind;

/** The values of one rule to be typed. A rule of care can take along the others of its stage that end on the same day. */
final class ValueFields extends Section {

    private final transient ValueSay say;
    private final transient List<AmountField> fields;
    private final transient Runnable changed;
    private final Div along = new Div();
    private transient List<Value> followers = List.of();

    ValueFields(ValueSay say, StageValues stage, Rule rule, Runnable changed) {
        this.say = say;
        this.changed = changed;
        addClassName("hw-value-rule");
        getElement().setAttribute("aria-label", say.in(stage.name()) + ": " + say.in(rule.name()));
        fields = rule.values().stream()
                .map(value -> new AmountField(say, value, changed))
                .toList();
        var amounts = Tags.div("hw-amounts");
        fields.forEach(amounts::add);
        add(
                Tags.span("hw-b", say.in(stage.name())),
                Tags.p("hw-value-about", say.in(rule.name())),
                amounts,
                along,
                Tags.p("hw-sub", say.source(rule.source())));
        until().ifPresent(field -> offer(stage, field.value()));
    }

    private Optional<AmountField> until() {
        return fields.stream()
                .filter(field -> field.value().place().kind() == Kind.PRECAUTION_UNTIL)
                .findFirst();
    }

    private void offer(StageValues stage, Value until) {
        var alike = stage.rules().stream()
                .filter(rule -> rule.values().stream()
                        .anyMatch(value ->
                                endsWith(value, until) && !value.place().equals(until.place())))
                .toList();
        if (alike.isEmpty()) {
            return;
        }
        along.add(Tags.button(
                "text", say.say("path.values.form.along", alike.size(), say.amount(counts(until))), pressed -> {
                    along.removeAll();
                    followers = alike.stream()
                            .flatMap(rule -> rule.values().stream())
                            .filter(value -> endsWith(value, until))
                            .toList();
                    var names = new UnorderedList();
                    names.addClassName("hw-value-along");
                    alike.forEach(rule -> names.add(new ListItem(say.in(rule.name()))));
                    along.add(Tags.p("hw-s", say.say("path.values.form.with")), names);
                    changed.run();
                }));
    }

    private static boolean endsWith(Value value, Value until) {
        return value.place().kind() == Kind.PRECAUTION_UNTIL && counts(value).equals(counts(until));
    }

    private static Amount counts(Value value) {
        return value.own().map(own -> own.amount()).orElse(value.shipped());
    }

    List<AmountField> fields() {
        return fields;
    }

    boolean isOf(Rule rule) {
        return fields.get(0).value().place().equals(rule.values().get(0).place());
    }

    void focus() {
        fields.get(0).focus();
    }

    /** What is wished for, of the rule and of those taken along. */
    Map<ValuePlace, Optional<Amount>> wishes() {
        var wishes = new LinkedHashMap<ValuePlace, Optional<Amount>>();
        fields.forEach(
                field -> field.wish().ifPresent(wish -> wishes.put(field.value().place(), wish)));
        until().flatMap(AmountField::amount)
                .ifPresent(amount -> followers.forEach(
                        value -> AmountField.wish(value, amount).ifPresent(wish -> wishes.put(value.place(), wish))));
        return wishes;
    }
}
