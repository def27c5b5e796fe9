package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.path.PrecautionNames;
import org.hearthway.path.SignNames;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.internal.StageReader.Asked;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** The pathways in {@code content/paths}, one file each. */
@Component
class PathKind implements ContentKind {

    private final VisitKindNames visitKinds;
    private final ObjectProvider<SignNames> signs;
    private final PrecautionNames precautions;
    private final SeasonKind seasons;
    private final Map<String, Template> templates = new LinkedHashMap<>();
    private final List<Asked> asked = new ArrayList<>();
    private final List<FamilyText> familyTexts = new ArrayList<>();

    PathKind(
            VisitKindNames visitKinds,
            ObjectProvider<SignNames> signs,
            PrecautionNames precautions,
            SeasonKind seasons) {
        this.visitKinds = visitKinds;
        this.signs = signs;
        this.precautions = precautions;
        this.seasons = seasons;
    }

    /** All pathways, by identifier. */
    List<Template> all() {
        return List.copyOf(templates.values());
    }

    Optional<Template> find(String id) {
        return Optional.ofNullable(templates.get(id));
    }

    @Override
    public String place() {
        return "paths";
    }

    @Override
    public void read(Entry file) {
        var provenance = file.provenance();
        var name = file.bilingual("name");
        var stages = new ArrayList<Stage>();
        var entries = new HashMap<String, Entry>();
        var links = new ArrayList<StageReader.Link>();
        var reader = new StageReader(asked, links);
        for (var entry : file.list("stages")) {
            var stage = reader.read(entry, stages);
            entries.put(stage.id(), entry);
            stages.add(stage);
        }
        if (stages.isEmpty()) {
            file.wrong("stages", "\"stages\" is missing or empty", "at least one stage");
        }
        var ids = stages.stream().map(Stage::id).toList();
        var advice = new AdviceReader(ids).read(file.list("advice"));
        var chosenAt = file.maybeText("begins-at");
        chosenAt.filter(id -> !ids.contains(id))
                .ifPresent(id -> file.wrong("begins-at", "\"begins-at\" is " + id, "a stage of this path"));
        var template = new Template(file.id(), provenance.version(), name, chosenAt, stages, advice);
        if (entries.size() == stages.size() && !stages.isEmpty()) {
            new StageLinks(template, entries, links).check();
        }
        templates.put(template.id(), template);
        familyTexts.add(familyText(template, provenance));
    }

    private static FamilyText familyText(Template template, Provenance provenance) {
        var pieces = PathPieces.of(template);
        var item = new SignOff.Item("paths", template.id(), template.version());
        return new FamilyText(item, template.name(), pieces.subList(1, pieces.size()), provenance);
    }

    @Override
    public List<FamilyText> familyTexts() {
        return List.copyOf(familyTexts);
    }

    @Override
    public void check() {
        for (var name : asked) {
            var known = known(name.key());
            if (!known.contains(name.name())) {
                name.at()
                        .wrong(
                                name.key(),
                                "\"" + name.key() + "\" is " + name.name(),
                                "one of "
                                        + String.join(
                                                ", ", known.stream().sorted().toList()));
            }
        }
    }

    private Set<String> known(String key) {
        return switch (key) {
            case "kind" -> visitKinds.names();
            case "tag" -> precautions.names();
            // the signs ask for the paths too: nobody is asked before all content was read
            case "signs" -> signs.getObject().names();
            default -> seasons.names();
        };
    }
}
