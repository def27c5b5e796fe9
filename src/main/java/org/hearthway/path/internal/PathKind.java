package org.hearthway.path.internal;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.VisitNeed;
import org.springframework.stereotype.Component;

/** The pathways in {@code content/paths}, one file each. */
@Component
class PathKind implements ContentKind {

    private static final String A_STAGE_BEFORE = "a stage that stands before this one";

    private final VisitKindNames visitKinds;
    private final Map<String, Template> templates = new LinkedHashMap<>();
    private final List<AskedVisit> asked = new ArrayList<>();
    private final List<FamilyText> familyTexts = new ArrayList<>();

    /** Where a kind of visit was asked for, so that the mistake can name the line. */
    private record AskedVisit(Entry at, String kind) {}

    PathKind(VisitKindNames visitKinds) {
        this.visitKinds = visitKinds;
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
        for (var entry : file.list("stages")) {
            var stage = stage(entry, stages);
            entries.put(stage.id(), entry);
            stages.add(stage);
        }
        if (stages.isEmpty()) {
            file.wrong("stages", "\"stages\" is missing or empty", "at least one stage");
        }
        var ids = stages.stream().map(Stage::id).toList();
        var advice = new AdviceReader(ids).read(file.list("advice"));
        var template = new Template(file.id(), provenance.version(), name, stages, advice);
        checkEnds(template, entries);
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

    private Stage stage(Entry entry, List<Stage> before) {
        var id = entry.text("id");
        if (before.stream().anyMatch(s -> s.id().equals(id))) {
            entry.wrong("id", "\"" + id + "\" stands twice", "each stage once");
        }
        var begins = begins(entry.block("begins"), before);
        var until = entry.maybeText("until");
        var lasts = entry.maybePeriod("lasts");
        if (until.isPresent() == lasts.isPresent()) {
            entry.wrong("lasts", "the stage has both or neither of \"lasts\" and \"until\"", "one of them");
        }
        lasts.filter(Period::isNegative).ifPresent(gap -> wrongGap(entry, "lasts", "P0D or more"));
        var stage = new Stage(
                id,
                entry.bilingual("name"),
                entry.bilingual("says"),
                begins,
                lasts.orElse(Period.ZERO),
                until,
                entry.yes("open-days"),
                entry.yes("signal"),
                visits(entry.list("visits")),
                entry.bilinguals("tasks"),
                precautions(entry.list("precautions")),
                entry.bilingual("why"),
                entry.text("source"));
        entry.done();
        return stage;
    }

    private static After begins(Entry entry, List<Stage> before) {
        var stage = entry.maybeText("after");
        var edge = entry.maybeChoice("edge", Edge.class).orElse(Edge.START);
        var after = new After(stage, edge, entry.period("earliest"), entry.period("usual"), entry.period("latest"));
        if (before.isEmpty() && stage.isPresent()) {
            entry.wrong("after", "the first stage counts from another", "no \"after\": it begins with the path");
        }
        if (!before.isEmpty() && stage.isEmpty()) {
            entry.wrong("after", "\"after\" is missing", A_STAGE_BEFORE);
        }
        stage.filter(id -> before.stream().noneMatch(s -> s.id().equals(id)))
                .ifPresent(id -> entry.wrong("after", "\"after\" is " + id, A_STAGE_BEFORE));
        if (!after.isOrdered()) {
            wrongGap(entry, "usual", "a gap between earliest and latest in any month");
        }
        entry.done();
        return after;
    }

    private List<VisitNeed> visits(List<Entry> entries) {
        var visits = new ArrayList<VisitNeed>();
        var ids = new HashSet<String>();
        for (var entry : entries) {
            var id = entry.text("id");
            if (!ids.add(id)) {
                entry.wrong("id", "\"" + id + "\" stands twice", "each visit once in a stage");
            }
            var kind = entry.text("kind");
            asked.add(new AskedVisit(entry, kind));
            var within = entry.period("within");
            if (within.isNegative()) {
                wrongGap(entry, "within", "P0D or more");
            }
            var every = entry.maybePeriod("every");
            every.filter(gap -> gap.isZero() || gap.isNegative())
                    .ifPresent(gap -> wrongGap(entry, "every", "more than P0D"));
            var times = every.isPresent() ? entry.integer("times", 2, 40) : 1;
            visits.add(new VisitNeed(id, kind, entry.period("after"), within, every, times));
            entry.done();
        }
        return visits;
    }

    private static List<Precaution> precautions(List<Entry> entries) {
        var precautions = new ArrayList<Precaution>();
        for (var entry : entries) {
            var from = entry.period("from");
            var until = entry.period("until");
            if (!LocalDate.EPOCH.plus(until).isAfter(LocalDate.EPOCH.plus(from))) {
                wrongGap(entry, "until", "a gap longer than \"from\"");
            }
            precautions.add(new Precaution(
                    entry.text("tag"),
                    entry.yes("forbids"),
                    from,
                    until,
                    entry.bilingual("says"),
                    entry.text("source")));
            entry.done();
        }
        return precautions;
    }

    /** A stage that lasts until another must stand before it, and none up to that one may count from its end. */
    private static void checkEnds(Template template, Map<String, Entry> entries) {
        var ids = template.stages().stream().map(Stage::id).toList();
        for (var stage : template.stages()) {
            var entry = entries.get(stage.id());
            if (entry == null || stage.until().isEmpty()) {
                continue;
            }
            var own = ids.indexOf(stage.id());
            var end = ids.indexOf(stage.until().get());
            if (end <= own) {
                entry.wrong("until", "\"until\" is " + stage.until().get(), "a stage that stands after this one");
            }
            template.stages().stream()
                    .limit(end + 1L)
                    .filter(s -> s.begins().edge() == Edge.END)
                    .filter(s -> s.begins().stage().equals(Optional.of(stage.id())))
                    .forEach(s -> Optional.ofNullable(entries.get(s.id()))
                            .ifPresent(e -> e.wrong(
                                    "begins",
                                    "it counts from the end of " + stage.id() + ", which is not known yet",
                                    "a gap from a start")));
        }
    }

    /** Names a gap as it stands in the file, where six weeks are not yet 42 days. */
    private static void wrongGap(Entry entry, String key, String expected) {
        entry.wrong(key, "\"" + key + "\" is " + entry.text(key), expected);
    }

    @Override
    public void check() {
        var known = visitKinds.names();
        for (var visit : asked) {
            if (!known.contains(visit.kind())) {
                visit.at()
                        .wrong(
                                "kind",
                                "\"kind\" is " + visit.kind(),
                                "one of "
                                        + String.join(
                                                ", ", known.stream().sorted().toList()));
            }
        }
    }
}
