package org.hearthway.path.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;
import org.hearthway.path.events.PathChanged;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The plans of the clinic's children, made afresh from template, decisions, calendar and today. */
@Service
class ChildPlans implements Plans {

    private final ClinicPaths paths;
    private final DecisionRecords records;
    private final PathReasons reasons;
    private final ChildRegister children;
    private final DecisionBounds bounds;
    private final PlanDays days;
    private final ClinicSettings settings;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ChildPlans(
            ClinicPaths paths,
            DecisionRecords records,
            PathReasons reasons,
            ChildRegister children,
            DecisionBounds bounds,
            PlanDays days,
            ClinicSettings settings,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.paths = paths;
        this.records = records;
        this.reasons = reasons;
        this.children = children;
        this.bounds = bounds;
        this.days = days;
        this.settings = settings;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public List<Template> pathways() {
        return paths.all();
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<ChildPlan> plan(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return standingOf(child).map(s -> new ChildPlan(plan(s.pathway(), s.course()), s.version()));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Plan> asDecidedBy(Viewer viewer, ChildId child, Instant moment) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var until = records.of(child).stream()
                .filter(row -> !row.at().isAfter(moment))
                .toList();
        return planOf(until).stream().toList();
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, Plan> all(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var plans = new HashMap<ChildId, Plan>();
        records.all()
                .forEach((child, rows) -> Standing.of(rows, this::template)
                        .ifPresent(s -> plans.put(child, plan(s.pathway(), s.course()))));
        return Map.copyOf(plans);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Decision> decisions(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var rows = records.of(child);
        var undone = Standing.undone(rows);
        var newestFirst = new ArrayList<Decision>();
        for (var row : rows) {
            newestFirst.add(0, decision(row, subject(row, rows), undone.contains(row.version())));
        }
        return List.copyOf(newestFirst);
    }

    /** What a decision is about: of one that takes another back, what the other was about. */
    private Bilingual subject(Row row, List<Row> rows) {
        return row.undoes()
                .flatMap(other ->
                        rows.stream().filter(taken -> taken.version() == other).findFirst())
                .map(taken -> subject(taken, rows))
                .orElseGet(() -> name(row));
    }

    private Decision decision(Row row, Bilingual subject, boolean undone) {
        var outcome = row.stage()
                .flatMap(template(row.pathway())::stage)
                .flatMap(stage -> row.outcome().flatMap(stage::outcome))
                .map(Template.Outcome::name);
        return new Decision(
                row.version(), row.kind(), subject, row.day(), outcome, undone, row.reason(), row.by(), row.at());
    }

    private Bilingual name(Row row) {
        var template = template(row.pathway());
        return row.stage()
                .filter(stage -> row.kind() != Kind.BEGUN)
                // a stage that a later version of the path left out keeps its identifier
                .map(id -> template.stage(id.split("/")[0])
                        .map(Template.Stage::name)
                        .orElse(Bilingual.same(id)))
                .orElse(template.name());
    }

    @Override
    @Transactional
    public void begin(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason) {
        begin(viewer, child, pathway, Optional.empty(), day, reason);
    }

    @Override
    @Transactional
    public void beginChosen(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason) {
        begin(viewer, child, pathway, paths.find(pathway).flatMap(Template::chosenAt), day, reason);
    }

    private void begin(
            Viewer viewer, ChildId child, String pathway, Optional<String> at, LocalDate day, String reason) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        bounds.begin(paths.find(pathway), day, reason, today());
        var rows = records.of(child);
        var version = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).version() + 1;
        add(viewer, DecisionRows.begun(child, version, pathway, at, day), reason);
        events.publishEvent(new PathChanged(child, viewer, clock.instant(), reasons.begun(template(pathway), day)));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Remark> advice(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return standingOf(child)
                .map(s -> remarks(viewer, child, s.pathway(), s.course()))
                .orElse(List.of());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Remark> adviceIfBegun(Viewer viewer, ChildId child, String pathway, LocalDate day) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        bounds.outlook(paths.find(pathway), day, today());
        return remarks(viewer, child, pathway, Course.begun(day));
    }

    private List<Remark> remarks(Viewer viewer, ChildId child, String pathway, Course course) {
        var data = children.get(viewer, child).data();
        return Remark.on(plan(pathway, course), data.birthDate(), data.gmfcs());
    }

    @Override
    @Transactional(readOnly = true)
    public Preview preview(Viewer viewer, ChildId child, Change change) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        return preview(standing(child), change);
    }

    private Standing standing(ChildId child) {
        return standingOf(child).orElseThrow(() -> new Invalid(Problem.at("", "path.problem.none")));
    }

    private Optional<Standing> standingOf(ChildId child) {
        return Standing.of(records.of(child), this::template);
    }

    private Preview preview(Standing standing, Change change) {
        var before = plan(standing.pathway(), standing.course());
        bounds.change(before, change, standing.course().begun(), today());
        var after = plan(standing.pathway(), changed(standing, change));
        bounds.order(before, after);
        bounds.clashes(before, after, change, clash -> reasons.clash(after.template(), clash));
        var outside = after.stage(change.stage())
                .filter(stage -> stage.why().outside())
                .isPresent();
        return new Preview(before, after, Effects.between(before, after), outside, standing.version());
    }

    private Course changed(Standing standing, Change change) {
        return new CourseChange(standing.course(), template(standing.pathway())).by(change);
    }

    @Override
    @Transactional
    public void apply(Viewer viewer, ChildId child, Change change, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var standing = standing(child);
        if (standing.version() != seen) {
            throw new Overtaken();
        }
        bounds.reason(reason);
        var preview = preview(standing, change);
        add(viewer, DecisionRows.of(child, seen + 1, standing.pathway(), change), reason);
        events.publishEvent(new PathChanged(child, viewer, clock.instant(), told(preview, change)));
    }

    private Bilingual told(Preview preview, Change change) {
        var before = preview.before().stage(change.stage());
        var after = preview.after().stage(change.stage());
        if (before.isEmpty() || after.isEmpty() || change instanceof Change.End) {
            return reasons.told(template(preview.after().template().id()), change);
        }
        var others = preview.effect().moves().stream()
                .filter(m -> !m.stage().equals(change.stage()))
                .count();
        return reasons.told(after.get(), before.get().start(), (int) others, today());
    }

    @Override
    @Transactional
    public void undo(Viewer viewer, ChildId child, long version, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var rows = records.of(child);
        if (rows.isEmpty() || rows.get(rows.size() - 1).version() != seen) {
            throw new Overtaken();
        }
        bounds.reason(reason);
        var undone = counting(rows, version);
        add(viewer, DecisionRows.undone(child, seen + 1, undone), reason);
        events.publishEvent(new PathChanged(child, viewer, clock.instant(), reasons.takenBack(name(undone))));
    }

    private static Row counting(List<Row> rows, long version) {
        var undone = Standing.undone(rows);
        return rows.stream()
                .filter(row -> row.version() == version && !undone.contains(version))
                .findFirst()
                .orElseThrow(() -> new Invalid(Problem.at("", "path.problem.undone")));
    }

    @Override
    @Transactional(readOnly = true)
    public Effect effectOfUndo(Viewer viewer, ChildId child, long version) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var rows = records.of(child);
        var without = new ArrayList<>(rows);
        without.add(DecisionRows.undone(child, version + 1, counting(rows, version)));
        return Effects.between(planOf(rows), planOf(without));
    }

    private Optional<Plan> planOf(List<Row> rows) {
        return Standing.of(rows, this::template).map(s -> plan(s.pathway(), s.course()));
    }

    private void add(Viewer viewer, Row row, String reason) {
        Optional<AccountId> by =
                viewer instanceof Viewer.Person person ? Optional.of(person.account()) : Optional.empty();
        records.add(row.said(reason.strip(), by, clock.instant()), viewer);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day) {
        return plan(viewer, child)
                .map(p -> p.plan().stages().stream()
                        .flatMap(stage -> stage.precautions().stream())
                        .filter(care -> care.holdsOn(day))
                        .toList())
                .orElse(List.of());
    }

    @Override
    public Bilingual why(Plan plan, Plan.Planned stage) {
        return reasons.why(plan.template(), stage);
    }

    private Plan plan(String pathway, Course course) {
        return Planner.plan(template(pathway), course, days.on(today()), today());
    }

    private Template template(String pathway) {
        return paths.find(pathway)
                .orElseThrow(() -> new IllegalStateException("no path " + pathway + " in the content"));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }
}
