package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Duties;
import org.hearthway.path.engine.Template.FamilyTask;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;

/** Everything in a path that a family reads, piece by piece in a fixed order: its name, then stage by stage. */
final class PathPieces {

    private PathPieces() {}

    /** The pieces, by place. */
    static List<Bilingual> of(Template template) {
        var pieces = new ArrayList<Bilingual>();
        each(template, piece -> {
            pieces.add(piece);
            return piece;
        });
        return List.copyOf(pieces);
    }

    /** The same path with other words at some places. */
    static Template with(Template template, Map<Integer, Bilingual> own) {
        var places = new ArrayList<Bilingual>();
        return each(template, piece -> {
            places.add(piece);
            return own.getOrDefault(places.size() - 1, piece);
        });
    }

    private static Template each(Template template, UnaryOperator<Bilingual> words) {
        var name = words.apply(template.name());
        var stages =
                template.stages().stream().map(stage -> stage(stage, words)).toList();
        return new Template(template.id(), template.version(), name, template.chosenAt(), stages, template.advice());
    }

    private static Stage stage(Stage stage, UnaryOperator<Bilingual> words) {
        var name = words.apply(stage.name());
        var says = words.apply(stage.says());
        var tasks = stage.duties().family().stream()
                .map(task -> new FamilyTask(task.name(), words.apply(task.does()), task.due()))
                .toList();
        var precautions = stage.precautions().stream()
                .map(each -> new Precaution(
                        each.tag(), each.forbids(), each.from(), each.until(), words.apply(each.says()), each.source()))
                .toList();
        var outcomes = stage.outcomes().stream()
                .map(each -> new Outcome(
                        each.id(),
                        each.name(),
                        each.tells().map(words),
                        each.opens(),
                        each.skips(),
                        each.endsPath(),
                        each.returnsTo(),
                        each.device()))
                .toList();
        return new Stage(
                stage.id(),
                name,
                says,
                words.apply(stage.why()),
                stage.source(),
                stage.who(),
                stage.timing(),
                new Duties(
                        tasks,
                        stage.duties().staff(),
                        stage.duties().entry(),
                        stage.duties().exit()),
                stage.visits(),
                precautions,
                outcomes,
                stage.signs());
    }
}
