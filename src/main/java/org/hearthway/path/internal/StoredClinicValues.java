package org.hearthway.path.internal;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.VisitsForPlans;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.events.PathChanged;
import org.hearthway.path.internal.ValueHistory.Given;
import org.hearthway.path.internal.ValueHistory.Made;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lets an administrator say what the clinic does otherwise than the shipped paths. */
@Service
class StoredClinicValues implements ClinicValues {

    private final ClinicPaths paths;
    private final ValueRows rows;
    private final ValueBounds bounds;
    private final ValueList list;
    private final PathPlans plans;
    private final VisitsForPlans visits;
    private final ValueReasons reasons;
    private final ValueNews news;
    private final AuditTrail trail;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    StoredClinicValues(
            ClinicPaths paths,
            ValueRows rows,
            ValueBounds bounds,
            ValueList list,
            PathPlans plans,
            VisitsForPlans visits,
            ValueReasons reasons,
            ValueNews news,
            AuditTrail trail,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events) {
        this.paths = paths;
        this.rows = rows;
        this.bounds = bounds;
        this.list = list;
        this.plans = plans;
        this.visits = visits;
        this.reasons = reasons;
        this.news = news;
        this.trail = trail;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public List<PathOfClinic> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return paths.ids().stream()
                .map(id -> list.of(shipped(id), rows.fresh(id)))
                .toList();
    }

    private Template shipped(String pathway) {
        return paths.shipped(pathway).orElseThrow(() -> new Invalid(Problem.at("pathway", "path.problem.pathway")));
    }

    /** What a change makes of a path's values. */
    private record Step(Template shipped, Fitted before, Fitted after, Made made, long version) {}

    private Step change(String pathway, Map<ValuePlace, Optional<Amount>> wishes) {
        var shipped = shipped(pathway);
        var history = rows.fresh(pathway);
        bounds.places(shipped, history, wishes);
        var before = Fitted.of(shipped, history.amounts());
        bounds.rules(shipped, before, wishes);
        var made = made(history, given(shipped, history, wishes), Optional.empty());
        return step(shipped, before, history, made);
    }

    /** Of each wish what counted before it and what the file says; one that changes nothing is none. */
    private static List<Given> given(Template shipped, ValueHistory history, Map<ValuePlace, Optional<Amount>> wishes) {
        var says = PathValues.of(shipped);
        var own = history.own();
        var given = new ArrayList<Given>();
        wishes.forEach((place, wish) -> {
            var now = Optional.ofNullable(own.get(place));
            if (!wish.equals(now.map(Own::amount))) {
                var file = Optional.ofNullable(says.get(place))
                        .or(() -> now.map(Own::shipped))
                        .orElseThrow();
                given.add(new Given(place, now.map(Own::amount).orElse(file), file, wish));
            }
        });
        return given;
    }

    private Step undone(String pathway, long number) {
        var shipped = shipped(pathway);
        var history = rows.fresh(pathway);
        bounds.counting(history, number);
        return step(
                shipped, Fitted.of(shipped, history.amounts()), history, made(history, List.of(), Optional.of(number)));
    }

    private Step step(Template shipped, Fitted before, ValueHistory history, Made made) {
        var after = Fitted.of(shipped, history.and(made).amounts());
        var wished = made.given().stream().map(Given::place).collect(Collectors.toSet());
        bounds.together(shipped, before, after, wished);
        return new Step(shipped, before, after, made, history.version());
    }

    private static Made made(ValueHistory history, List<Given> given, Optional<Long> undoes) {
        return new Made(history.version() + 1, given, undoes, "", Optional.empty(), Instant.EPOCH);
    }

    @Override
    @Transactional(readOnly = true)
    public Preview preview(Viewer viewer, String pathway, Map<ValuePlace, Optional<Amount>> wishes) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return preview(change(pathway, wishes));
    }

    @Override
    @Transactional(readOnly = true)
    public Preview previewUndo(Viewer viewer, String pathway, long number) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return preview(undone(pathway, number));
    }

    private Preview preview(Step step) {
        var shifts = plans.between(step.before().template(), step.after().template());
        var children = new ArrayList<ChildEffect>();
        shifts.forEach((child, shift) -> shift.of(child, visits::ahead).ifPresent(children::add));
        return new Preview(children, shifts.size(), again(step), step.version());
    }

    /** Values that did not fit, which nobody speaks of now, and which would count again all the same. */
    private List<Bilingual> again(Step step) {
        var wished = step.made().given().stream().map(Given::place).toList();
        return step.before().left().stream()
                .map(Fitted.Left::place)
                .filter(place -> !wished.contains(place) && step.after().own().containsKey(place))
                .map(place -> list.name(step.shipped(), place))
                .toList();
    }

    @Override
    @Transactional
    public void apply(
            Viewer viewer, String pathway, Map<ValuePlace, Optional<Amount>> wishes, String reason, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        notOvertaken(pathway, seen);
        bounds.reason(reason);
        make(viewer, change(pathway, wishes), reason, "path values changed");
    }

    @Override
    @Transactional
    public void undo(Viewer viewer, String pathway, long number, String reason, long seen) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        notOvertaken(pathway, seen);
        bounds.reason(reason);
        make(viewer, undone(pathway, number), reason, "path values taken back");
    }

    private void notOvertaken(String pathway, long seen) {
        if (rows.fresh(pathway).version() != seen) {
            throw new Overtaken();
        }
    }

    /** Keeps it and tells each family whose plan changes; the rows come first, so that whoever hears of it reads them. */
    private void make(Viewer viewer, Step step, String reason, String what) {
        var by = viewer instanceof Viewer.Person person ? Optional.of(person.account()) : Optional.<AccountId>empty();
        var now = clock.instant();
        var made = step.made();
        var pathway = step.shipped().id();
        rows.add(pathway, new Made(made.number(), made.given(), made.undoes(), reason.strip(), by, now), viewer);
        trail.happened(viewer, what + ": " + pathway + ", " + made.undoes().orElse(made.number()));
        var told = new LinkedHashMap<ChildId, Bilingual>();
        plans.between(step.before().template(), step.after().template())
                .forEach((child, shift) -> shift.of(child, visits::ahead)
                        .filter(ChildEffect::concernsTheFamily)
                        .ifPresent(effect -> told.put(child, news.told(shift, effect))));
        told.forEach((child, words) -> events.publishEvent(new PathChanged(child, viewer, now, words)));
    }

    @Override
    public Optional<Bilingual> why(Template.Precaution rule) {
        return reasons.why(rule);
    }
}
