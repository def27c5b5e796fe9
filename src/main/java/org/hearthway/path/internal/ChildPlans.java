package org.hearthway.path.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
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
import org.hearthway.path.Plans;
import org.hearthway.path.VisitsForPlans;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.network.Span;
import org.hearthway.path.events.PathChanged;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.hearthway.path.internal.Standing.OnPath;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The plans of the clinic's children, made afresh from templates, decisions, calendar and today. */
@Service
class ChildPlans implements Plans {

    private final ClinicPaths paths;
    private final DecisionRecords records;
    private final ChildCourses courses;
    private final DecisionsTold told;
    private final PathReasons reasons;
    private final ChildRegister children;
    private final VisitsForPlans visits;
    private final DecisionBounds bounds;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ChildPlans(
            ClinicPaths paths,
            DecisionRecords records,
            ChildCourses courses,
            DecisionsTold told,
            PathReasons reasons,
            ChildRegister children,
            VisitsForPlans visits,
            DecisionBounds bounds,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.paths = paths;
        this.records = records;
        this.courses = courses;
        this.told = told;
        this.reasons = reasons;
        this.children = children;
        this.visits = visits;
        this.bounds = bounds;
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
    public List<ChildPlan> plans(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return courses.plans(standing(child));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Plan> asDecidedBy(Viewer viewer, ChildId child, Instant moment) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var until = records.of(child).stream()
                .filter(row -> !row.at().isAfter(moment))
                .toList();
        return courses.plans(until, moment);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Plan> byPathAlone(Viewer viewer, ChildId child, String pathway) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var rows = records.of(child);
        var undone = Standing.undone(rows);
        var begun = rows.stream()
                .filter(row -> row.isBeginning() && !undone.contains(row.version()))
                .toList();
        var first = courses.standing(begun).on(pathway).map(OnPath::course);
        return courses.standing(rows)
                .on(pathway)
                .flatMap(path -> first.map(path.course()::asItHappened))
                .map(course -> courses.plan(pathway, course));
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, List<Plan>> all(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var plans = new HashMap<ChildId, List<Plan>>();
        records.all().forEach((child, rows) -> plans.put(child, courses.plans(rows)));
        return Map.copyOf(plans);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Decision> decisions(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return told.newestFirst(records.of(child));
    }

    @Override
    @Transactional
    public void begin(Viewer viewer, ChildId child, String pathway, Beginning how, LocalDate day, String reason) {
        begin(viewer, child, Start.atFirst(pathway, how, day), reason);
    }

    @Override
    @Transactional
    public void beginChosen(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason) {
        var at = paths.find(pathway).flatMap(Template::chosenAt);
        begin(viewer, child, new Start(pathway, Beginning.INSTEAD, at, day, Map.of()), reason);
    }

    @Override
    @Transactional
    public void begin(Viewer viewer, ChildId child, Start start, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        seen(records.of(child), seen);
        begin(viewer, child, start, reason);
    }

    private void begin(Viewer viewer, ChildId child, Start start, String reason) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        bounds.begin(paths.find(start.pathway()), start, reason, courses.today());
        var template = courses.template(start.pathway());
        var rows = begun(child, standing(child).version(), start, template);
        var says = reasons.begun(template, start.day());
        rows.subList(1, rows.size()).forEach(row -> keep(viewer, row, reason));
        keep(viewer, child, rows.get(0), reason, says);
    }

    /** The beginning, and the days of what was done before, each a decision that can be put right on its own. */
    private static List<NewDecision> begun(ChildId child, long version, Start start, Template template) {
        var rows = new ArrayList<NewDecision>();
        rows.add(NewDecision.begun(child, version + 1, start));
        for (var stage : template.stages()) {
            Optional.ofNullable(start.before().get(stage.id()))
                    .map(day -> new Change.Fix(stage.id(), day))
                    .ifPresent(
                            fix -> rows.add(NewDecision.changed(child, version + 1 + rows.size(), template.id(), fix)));
        }
        return rows;
    }

    @Override
    @Transactional(readOnly = true)
    public Outlook outlook(Viewer viewer, ChildId child, Start start) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        bounds.outlook(paths.find(start.pathway()), start, courses.today());
        var rows = records.of(child);
        var version = courses.standing(rows).version();
        var with = new ArrayList<>(rows);
        begun(child, version, start, courses.template(start.pathway())).forEach(row -> with.add(row.unsaid()));
        var after = courses.standing(with);
        var course = on(after, start.pathway()).course();
        var effect = Effects.between(courses.plans(rows), courses.plans(with), visits.ahead(child));
        return new Outlook(
                courses.plan(start.pathway(), course),
                remarks(viewer, child, start.pathway(), course),
                effect,
                version);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Remark> advice(Viewer viewer, ChildId child, String pathway) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return standing(child)
                .on(pathway)
                .map(path -> remarks(viewer, child, pathway, path.course()))
                .orElse(List.of());
    }

    private List<Remark> remarks(Viewer viewer, ChildId child, String pathway, Course course) {
        var data = children.get(viewer, child).data();
        return Remark.on(courses.plan(pathway, course), data.birthDate(), data.gmfcs());
    }

    @Override
    @Transactional(readOnly = true)
    public Preview preview(Viewer viewer, ChildId child, String pathway, Change change) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        return preview(child, standing(child), pathway, change);
    }

    private Standing standing(ChildId child) {
        return courses.standing(records.of(child));
    }

    private static OnPath on(Standing standing, String pathway) {
        return standing.on(pathway).orElseThrow(() -> new Invalid(Problem.at("", "path.problem.none")));
    }

    private Preview preview(ChildId child, Standing standing, String pathway, Change change) {
        var path = on(standing, pathway);
        var before = courses.plan(pathway, path.course());
        bounds.change(before, change, path.course(), courses.today());
        var course = new CourseChange(path.course(), courses.template(pathway)).by(change);
        var after = courses.plan(pathway, course);
        bounds.order(before, after);
        bounds.clashes(before, after, change, clash -> reasons.clash(after.template(), clash));
        var outside = after.stage(change.stage())
                .filter(stage -> stage.why().outside())
                .isPresent();
        var effect = Effects.between(List.of(before), List.of(after), visits.ahead(child));
        return new Preview(before, after, effect, outside, standing.version());
    }

    @Override
    @Transactional
    public void apply(Viewer viewer, ChildId child, String pathway, Change change, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var standing = seen(records.of(child), seen);
        bounds.reason(reason);
        var preview = preview(child, standing, pathway, change);
        keep(viewer, child, NewDecision.changed(child, seen + 1, pathway, change), reason, says(preview, change));
    }

    private Bilingual says(Preview preview, Change change) {
        var before = preview.before().stage(change.stage());
        var after = preview.after().stage(change.stage());
        if (before.isEmpty() || after.isEmpty() || change instanceof Change.End) {
            return reasons.told(preview.after().template(), change);
        }
        var others = preview.effect().moves().stream()
                .filter(m -> !m.stage().equals(change.stage()))
                .count();
        return reasons.told(after.get(), before.get().start(), (int) others, courses.today());
    }

    @Override
    @Transactional(readOnly = true)
    public Effect effectOfClosing(Viewer viewer, ChildId child, String pathway, LocalDate day) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var rows = records.of(child);
        bounds.closing(on(courses.standing(rows), pathway).course().begun(), day, courses.today());
        return effectOf(child, rows, version -> NewDecision.closed(child, version, pathway, day));
    }

    @Override
    @Transactional
    public void close(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var standing = seen(records.of(child), seen);
        bounds.reason(reason);
        bounds.closing(on(standing, pathway).course().begun(), day, courses.today());
        var says = reasons.closed(courses.template(pathway), day);
        keep(viewer, child, NewDecision.closed(child, seen + 1, pathway, day), reason, says);
    }

    @Override
    @Transactional(readOnly = true)
    public Effect effectOfAway(Viewer viewer, ChildId child, Span days) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        bounds.away(days, courses.today());
        return effectOf(child, records.of(child), version -> NewDecision.away(child, version, days));
    }

    @Override
    @Transactional
    public void away(Viewer viewer, ChildId child, Span days, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        seen(records.of(child), seen);
        bounds.reason(reason);
        bounds.away(days, courses.today());
        keep(viewer, child, NewDecision.away(child, seen + 1, days), reason, reasons.away(days));
    }

    @Override
    @Transactional(readOnly = true)
    public Effect effectOfUndo(Viewer viewer, ChildId child, long version) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var rows = records.of(child);
        var taken = counting(rows, version);
        return effectOf(child, rows, next -> NewDecision.undone(child, next, taken));
    }

    @Override
    @Transactional
    public void undo(Viewer viewer, ChildId child, long version, String reason, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var rows = records.of(child);
        seen(rows, seen);
        bounds.reason(reason);
        var taken = counting(rows, version);
        keep(viewer, child, NewDecision.undone(child, seen + 1, taken), reason, reasons.takenBack(told.name(taken)));
    }

    private static Row counting(List<Row> rows, long version) {
        var undone = Standing.undone(rows);
        return rows.stream()
                .filter(row -> row.version() == version && !undone.contains(version))
                .findFirst()
                .orElseThrow(() -> new Invalid(Problem.at("", "path.problem.undone")));
    }

    private Effect effectOf(ChildId child, List<Row> rows, LongFunction<NewDecision> decision) {
        var with = new ArrayList<>(rows);
        with.add(decision.apply(courses.standing(rows).version() + 1).unsaid());
        return Effects.between(courses.plans(rows), courses.plans(with), visits.ahead(child));
    }

    private Standing seen(List<Row> rows, long seen) {
        var standing = courses.standing(rows);
        if (standing.version() != seen) {
            throw new Overtaken();
        }
        return standing;
    }

    private void keep(Viewer viewer, ChildId child, NewDecision decision, String reason, Bilingual says) {
        keep(viewer, decision, reason);
        events.publishEvent(new PathChanged(child, viewer, clock.instant(), says));
    }

    private void keep(Viewer viewer, NewDecision decision, String reason) {
        Optional<AccountId> by =
                viewer instanceof Viewer.Person person ? Optional.of(person.account()) : Optional.empty();
        records.add(decision.said(reason.strip(), by, clock.instant()), viewer);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day) {
        return plans(viewer, child).stream()
                .flatMap(plan -> plan.plan().stages().stream())
                .flatMap(stage -> stage.precautions().stream())
                .filter(care -> care.holdsOn(day))
                .toList();
    }

    @Override
    public Bilingual why(Plan plan, Plan.Planned stage) {
        return reasons.why(plan, stage);
    }

    @Override
    public Optional<Bilingual> why(Plan plan, ValuePlace place) {
        return reasons.why(plan, place);
    }

    @Override
    public Bilingual way(Plan plan, Clash.Way way) {
        return reasons.way(plan.template(), way);
    }
}
