package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Stage;

/** The gaps of one of a stage's rules, for one child: earliest, usual, latest, and which rule where it has several. */
final class RuleFields extends Div {

    private final transient Stage stage;
    private final transient Course course;
    private final Select<Integer> which = new Select<>();
    private final GapField earliest;
    private final GapField usual;
    private final GapField latest;

    /** Shows the rules as they are for the child now. */
    RuleFields(StageWords say, Template path, Stage stage, Course course, Runnable changed) {
        this.stage = stage;
        this.course = course;
        earliest = new GapField(say, say.say("path.rule.earliest"));
        usual = new GapField(say, say.say("path.rule.usual"));
        latest = new GapField(say, say.say("path.rule.latest"));
        var rules = stage.timing().begins();
        which.setLabel(say.say("path.rule.which"));
        which.setWidthFull();
        which.setItems(IntStream.range(0, rules.size()).boxed().toList());
        which.setItemLabelGenerator(at -> say.anchor(path, rules.get(at)));
        which.setReadOnly(rules.size() == 1);
        which.setValue(0);
        which.addValueChangeListener(chosen -> fill());
        fill();
        List.of(earliest, usual, latest).forEach(field -> field.addValueChangeListener(typed -> changed.run()));
        add(which, earliest, usual, latest, Tags.p("hw-sub", say.say("path.rule.hint")));
    }

    /** The field that names what is wrong with the gaps. */
    GapField usual() {
        return usual;
    }

    private void fill() {
        var rule = course.gaps()
                .getOrDefault(
                        new Course.RuleAt(stage.id(), which.getValue()),
                        stage.timing().begins().get(which.getValue()));
        earliest.setValue(rule.earliest());
        usual.setValue(rule.usual().orElse(null));
        latest.setValue(rule.latest().orElse(null));
    }

    /** Whether a number that was typed cannot be. */
    boolean isWrong() {
        return earliest.isWrong() || usual.isWrong() || latest.isWrong();
    }

    /** The rule typed; empty while it names no earliest gap or a number cannot be. */
    Optional<Change> change() {
        var shared = stage.timing().begins().get(which.getValue());
        return earliest.typed()
                .filter(first -> !isWrong())
                .map(first -> new Change.OwnRule(
                        stage.id(),
                        which.getValue(),
                        new After(shared.stage(), shared.edge(), first, usual.typed(), latest.typed())));
    }
}
