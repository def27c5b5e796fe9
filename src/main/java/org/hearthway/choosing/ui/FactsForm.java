package org.hearthway.choosing.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hearthway.base.Invalid;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Fact.Origin;
import org.hearthway.choosing.Talk;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** All facts about a child on one calm form; each may be left unknown. */
final class FactsForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Shows what the facts would say; nothing is saved. */
        void look(Map<String, Set<String>> choices);

        /** Saves; refuses with {@link Invalid}. */
        void save(Map<String, Answer.Data> facts);
    }

    private final transient Telling say;
    private final transient Talk talk;
    private final transient Acts acts;
    private final transient Function<Answer, String> since;
    private final List<FactField> fields = new ArrayList<>();
    private final Div unsaved = Tags.div("hw-asked-unsaved");
    private final boolean may;

    FactsForm(Telling say, List<Fact.Group> groups, Talk talk, boolean may, Function<Answer, String> since, Acts acts) {
        this.say = say;
        this.talk = talk;
        this.acts = acts;
        this.since = since;
        this.may = may;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-asking");
        getElement().setAttribute("aria-label", say.say("choosing.facts"));
        var head = Tags.div("hw-asked-head", Tags.h2("", say.say("choosing.facts")));
        add(head, Tags.p("hw-sub", say.say(may ? "choosing.facts.hint" : "choosing.facts.read-only")));
        groups.forEach(this::group);
        if (may) {
            unsaved.add(Tags.span("hw-sub", say.say("choosing.facts.unsaved")), saveButton());
            unsaved.setVisible(false);
            head.add(unsaved);
        }
    }

    private void group(Fact.Group group) {
        var box = new Div();
        box.addClassName("hw-asked-group");
        box.getElement().setAttribute("role", "group").setAttribute("aria-label", say.in(group.name()));
        var title = new com.vaadin.flow.component.html.H3(say.in(group.name()));
        box.add(title);
        for (var fact : group.facts()) {
            box.add(fact.origin() == Origin.LEVEL ? level(fact) : field(fact));
            if (fact.origin() == Origin.LEVEL) {
                box.add(known(say.say("choosing.age"), say.say("choosing.age.is", talk.years())));
            }
        }
        add(box);
    }

    private Div level(Fact fact) {
        return known(
                say.in(fact.name()),
                talk.level()
                        .flatMap(level -> fact.choice(level.toString()))
                        .map(choice -> say.in(choice.name()))
                        .orElse(say.say("choosing.unknown")));
    }

    /** What comes from the child's data and is not entered here. */
    private Div known(String name, String is) {
        return Tags.div(
                "hw-asked",
                Tags.span("hw-asked-name", name),
                Tags.span("hw-sub hw-asked-since", say.say("choosing.from-child")),
                Tags.span("hw-asked-is", is));
    }

    private FactField field(Fact fact) {
        var answer = Optional.ofNullable(talk.answers().get(fact.id()));
        var field = new FactField(
                say,
                fact,
                answer.map(Answer::data).orElse(Answer.Data.NONE),
                answer.filter(some -> !some.data().isEmpty()).map(since).orElse(""),
                may,
                this::changed);
        field.note().addValueChangeListener(typed -> changed());
        fields.add(field);
        return field;
    }

    private NativeButton saveButton() {
        var save = Tags.button("main", say.say("choosing.facts.save"), pressed -> save());
        save.setId("save-facts");
        return Keys.press(save, "s");
    }

    private void changed() {
        var choices = new HashMap<String, Set<String>>();
        fields.forEach(field -> choices.put(field.fact(), field.data().choices()));
        unsaved.setVisible(true);
        acts.look(choices);
    }

    private void save() {
        var notes = new HashMap<String, HasValidation>();
        var facts = new HashMap<String, Answer.Data>();
        for (var field : fields) {
            notes.put(field.fact(), field.note());
            facts.put(field.fact(), field.data());
        }
        notes.values().forEach(note -> note.setInvalid(false));
        try {
            acts.save(facts);
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), notes, say.words(), say.language());
        }
    }
}
