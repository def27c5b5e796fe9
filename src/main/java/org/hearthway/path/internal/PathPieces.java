package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Template;
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
        return new Template(template.id(), template.version(), name, stages, template.advice());
    }

    private static Stage stage(Stage stage, UnaryOperator<Bilingual> words) {
        return new Stage(
                stage.id(),
                words.apply(stage.name()),
                words.apply(stage.says()),
                stage.begins(),
                stage.lasts(),
                stage.until(),
                stage.onOpenDays(),
                stage.signal(),
                stage.visits(),
                stage.tasks().stream().map(words).toList(),
                stage.precautions().stream()
                        .map(each -> new Precaution(
                                each.tag(),
                                each.forbids(),
                                each.from(),
                                each.until(),
                                words.apply(each.says()),
                                each.source()))
                        .toList(),
                words.apply(stage.why()),
                stage.source());
    }
}
