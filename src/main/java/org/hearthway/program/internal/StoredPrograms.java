package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.UsualRules;
import org.hearthway.program.events.ProgramSaved;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Programs in the database. */
@Service
class StoredPrograms implements Programs {

    private final ProgramStore store;
    private final Gate gate;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final KeptExercises kept;
    private final ProgramWords words;
    private final ChildRegister children;
    private final ClinicSettings clinic;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    StoredPrograms(
            ProgramStore store,
            Gate gate,
            Cautions cautions,
            ExerciseLibrary library,
            KeptExercises kept,
            ProgramWords words,
            ChildRegister children,
            ClinicSettings clinic,
            ApplicationEventPublisher events,
            Clock clock) {
        this.store = store;
        this.gate = gate;
        this.cautions = cautions;
        this.library = library;
        this.kept = kept;
        this.words = words;
        this.children = children;
        this.clinic = clinic;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Version> latest(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return store.latest(child);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Version> former(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return store.all(child).stream().skip(1).findFirst();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Version> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return store.all(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Caution> cautions(Viewer viewer, ChildId child, Draft draft) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return cautions.of(draft, cautions.rules(viewer, child));
    }

    @Override
    @Transactional
    public Version save(Viewer viewer, ChildId child, Draft draft, int seen) {
        gate.require(viewer, Action.CHANGE_PROGRAM, child);
        if (!(viewer instanceof Viewer.Person author)) {
            throw new NotAvailable();
        }
        var before = store.latest(child);
        check(viewer, child, draft, before.map(Version::lines).orElse(List.of()));
        if (before.map(Version::number).orElse(0) != seen) {
            throw new Overtaken();
        }
        var version = new Version(
                seen + 1,
                draft.effective(),
                draft.lines(),
                author.account(),
                ProgramStore.utc(clock.instant()).toInstant(),
                draft.reason().strip(),
                draft.toFamily().strip());
        store.insert(child, version);
        version.lines().stream()
                .filter(line -> !library.isGone(line.exercise()))
                .flatMap(line -> library.find(line.exercise()).stream())
                .forEach(kept::keep);
        store.drop(author.account(), child);
        events.publishEvent(new ProgramSaved(
                child,
                viewer,
                version.at(),
                version.number(),
                words.told(before.map(Version::lines).orElse(List.of()), version.lines(), version.toFamily())));
        return version;
    }

    private void check(Viewer viewer, ChildId child, Draft draft, List<ProgramLine> before) {
        var problems = new ArrayList<Problem>();
        problems.addAll(ProgramRules.check(draft.lines(), sided(before)));
        problems.addAll(ProgramRules.checkEffective(draft.effective(), LocalDate.now(clock.withZone(clinic.zone()))));
        problems.addAll(ProgramRules.checkReason(draft.reason()));
        problems.addAll(ProgramRules.checkToFamily(draft.toFamily()));
        for (var caution : cautions.of(draft, cautions.rules(viewer, child))) {
            if (caution.isLocked()) {
                problems.add(locked(draft.lines().get(caution.line()), caution));
            }
        }
        problems.addAll(unusual(viewer, child, draft.lines(), before));
        if (!gate.allows(viewer, Action.LIFT_PRECAUTION, child)) {
            problems.addAll(newLeave(draft.lines(), before));
        }
        Invalid.ifAny(problems);
    }

    /** Doses outside what is usual at the child's age ask for a reason, unless it goes on as it was. */
    private List<Problem> unusual(Viewer viewer, ChildId child, List<ProgramLine> lines, List<ProgramLine> before) {
        var problems = new ArrayList<Problem>();
        var years = children.get(viewer, child).ageOn(LocalDate.now(clock.withZone(clinic.zone())));
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            var exercise = library.find(line.exercise());
            if (exercise.isPresent()
                    && UsualRules.asks(line, before, exercise.get().usualFor(years))
                    && !ProgramRules.BECAUSE.holds(line.beyond().strip().length())) {
                problems.add(Problem.at(
                        ProgramRules.field(i, "beyond"),
                        "program.problem.unusual",
                        i + 1,
                        exercise.get().name(),
                        ProgramRules.BECAUSE.min(),
                        ProgramRules.BECAUSE.max()));
            }
        }
        return problems;
    }

    /** Leave that stands in the draft and was not there before: only who may give it brings it in. */
    private static List<Problem> newLeave(List<ProgramLine> lines, List<ProgramLine> before) {
        var problems = new ArrayList<Problem>();
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            var given = before.stream()
                    .filter(was -> was.exercise().equals(line.exercise()))
                    .flatMap(was -> was.exceptions().stream())
                    .collect(Collectors.toSet());
            if (!given.containsAll(line.exceptions())) {
                problems.add(Problem.at(ProgramRules.field(i, "exceptions"), "program.problem.leave", i + 1));
            }
        }
        return problems;
    }

    private Problem locked(ProgramLine line, Caution caution) {
        var tag = caution.care().rule().tag();
        return Problem.at(
                ProgramRules.field(caution.line(), "from"),
                "program.problem.locked",
                caution.line() + 1,
                library.find(line.exercise()).orElseThrow().name(),
                library.precaution(tag).orElse(caution.care().rule().says()),
                caution.care().until());
    }

    /** What may stand in a program: all of the library, and what is gone from it but stood there before. */
    private Map<String, Boolean> sided(List<ProgramLine> before) {
        var known = new HashMap<String, Boolean>();
        library.all().forEach(exercise -> known.put(exercise.id(), exercise.sided()));
        before.stream()
                .flatMap(line -> library.find(line.exercise()).stream())
                .forEach(exercise -> known.put(exercise.id(), exercise.sided()));
        return known;
    }

    @Override
    @Transactional
    public void keepDraft(Viewer.Person viewer, ChildId child, Draft draft, int seen) {
        gate.require(viewer, Action.CHANGE_PROGRAM, child);
        store.keep(viewer.account(), child, draft, seen, clock.instant());
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptDraft> keptDraft(Viewer.Person viewer, ChildId child) {
        gate.require(viewer, Action.CHANGE_PROGRAM, child);
        return store.draft(viewer.account(), child);
    }

    @Override
    @Transactional
    public void dropDraft(Viewer.Person viewer, ChildId child) {
        gate.require(viewer, Action.CHANGE_PROGRAM, child);
        store.drop(viewer.account(), child);
    }
}
