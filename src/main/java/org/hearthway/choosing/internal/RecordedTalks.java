package org.hearthway.choosing.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.FactsEntry;
import org.hearthway.choosing.Handout;
import org.hearthway.choosing.Talk;
import org.hearthway.choosing.engine.Known;
import org.hearthway.choosing.events.FactsEntered;
import org.hearthway.choosing.events.PathDecided;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.Plans;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Facts as they were entered, held against what the clinic knows of each path, and what was decided. */
@Service
class RecordedTalks implements Choosing {

    private final ChoosingKind content;
    private final HandoutWriter handouts;
    private final FactVersions versions;
    private final WrittenDecisions written;
    private final Plans plans;
    private final ChildRegister children;
    private final Gate gate;
    private final AuditTrail trail;
    private final ClinicSettings clinic;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RecordedTalks(
            ChoosingKind content,
            HandoutWriter handouts,
            FactVersions versions,
            WrittenDecisions written,
            Plans plans,
            ChildRegister children,
            Gate gate,
            AuditTrail trail,
            ClinicSettings clinic,
            Clock clock,
            ApplicationEventPublisher events) {
        this.content = content;
        this.handouts = handouts;
        this.versions = versions;
        this.written = written;
        this.plans = plans;
        this.children = children;
        this.gate = gate;
        this.trail = trail;
        this.clinic = clinic;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public List<Fact.Group> facts() {
        return content.asked().groups();
    }

    @Override
    public List<Way> ways() {
        var paths = new HashMap<String, Bilingual>();
        plans.pathways().forEach(path -> paths.put(path.id(), path.name()));
        var ways = new ArrayList<Way>();
        content.guides()
                .forEach(read -> Optional.ofNullable(paths.remove(read.guide().id()))
                        .ifPresent(name -> ways.add(new Way(read.guide().id(), name))));
        // a path that nobody has written a guide for can be chosen all the same
        plans.pathways().stream()
                .filter(path -> paths.containsKey(path.id()))
                .forEach(path -> ways.add(new Way(path.id(), path.name())));
        return List.copyOf(ways);
    }

    @Override
    @Transactional(readOnly = true)
    public Talk talk(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_CHOOSING, child);
        var stands = versions.newest(child);
        return talk(children.get(viewer, child), stands, held(stands));
    }

    @Override
    @Transactional(readOnly = true)
    public Talk talkIf(Viewer viewer, ChildId child, Map<String, Set<String>> choices) {
        gate.require(viewer, Action.SEE_CHOOSING, child);
        return talk(children.get(viewer, child), versions.newest(child), choices);
    }

    private Talk talk(Child child, FactVersions.Version stands, Map<String, Set<String>> choices) {
        var known = known(child, choices);
        var paths = content.guides().stream()
                .map(ChoosingKind.Read::guide)
                .map(guide -> new Talk.OnPath(
                        guide, guide.read(known), guide.change().shown().in(known)))
                .toList();
        return new Talk(known.years(), child.gmfcs(), stands.answers(), paths, stands.number());
    }

    private static Map<String, Set<String>> held(FactVersions.Version stands) {
        var held = new HashMap<String, Set<String>>();
        stands.answers().forEach((fact, answer) -> held.put(fact, answer.data().choices()));
        return held;
    }

    /** What the content still asks about; a choice that a later version of the content left out says nothing. */
    private Known known(Child child, Map<String, Set<String>> choices) {
        var answers = new HashMap<String, Set<String>>();
        content.facts().forEach((id, fact) -> {
            var held = fact.origin() == Fact.Origin.LEVEL
                    ? child.gmfcs().map(level -> Set.of(level.toString())).orElse(Set.of())
                    : choices.getOrDefault(id, Set.of());
            var known = held.stream()
                    .filter(choice -> fact.choice(choice).isPresent())
                    .collect(java.util.stream.Collectors.toSet());
            if (!known.isEmpty()) {
                answers.put(id, known);
            }
        });
        return new Known(answers, child.ageOn(today()));
    }

    @Override
    @Transactional
    public void enter(Viewer viewer, ChildId child, Map<String, Answer.Data> facts, long seen) {
        gate.require(viewer, Action.ENTER_FACTS, child);
        var person = person(viewer);
        var stands = versions.newest(child);
        if (stands.number() != seen) {
            throw new Overtaken();
        }
        TalkRules.facts(facts, content.facts());
        var now = now();
        var answers = new HashMap<>(stands.answers());
        facts.forEach((fact, entered) -> {
            var data = new Answer.Data(entered.choices(), entered.note().strip());
            var was = Optional.ofNullable(answers.get(fact)).map(Answer::data).orElse(Answer.Data.NONE);
            if (!data.equals(was)) {
                answers.put(fact, new Answer(data, person.account(), now));
            }
        });
        if (!answers.equals(stands.answers())) {
            versions.add(child, new FactVersions.Version(seen + 1, answers), person.account(), now);
            events.publishEvent(new FactsEntered(child, viewer, now));
        }
    }

    @Override
    @Transactional(readOnly = true)
    public List<FactsEntry> entries(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_CHOOSING, child);
        return versions.all(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Decision> decisions(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_CHOOSING, child);
        return written.of(child).stream().map(this::named).toList();
    }

    private Decision named(Decision decision) {
        return new Decision(
                decision.number(),
                decision.data(),
                decision.data().path().map(this::name),
                decision.by(),
                decision.at());
    }

    private Bilingual name(String path) {
        return ways().stream()
                .filter(way -> way.id().equals(path))
                .findFirst()
                .map(Way::name)
                // a path that a later version of the content left out keeps its identifier
                .orElseGet(() -> Bilingual.same(path));
    }

    @Override
    @Transactional
    public void decide(Viewer viewer, ChildId child, Decision.Data data, long seen) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        var person = person(viewer);
        if (written.of(child).stream().mapToLong(Decision::number).max().orElse(0) != seen) {
            throw new Overtaken();
        }
        TalkRules.decision(data, ways(), children.get(viewer, child).data().birthDate(), today());
        var now = now();
        var stripped = new Decision.Data(
                data.path(), data.day(), data.present().strip(), data.reason().strip());
        written.add(child, new Decision(seen + 1, stripped, Optional.empty(), person.account(), now));
        events.publishEvent(new PathDecided(child, viewer, now));
        stripped.path()
                .filter(path -> !isOn(viewer, child, path))
                .ifPresent(path -> plans.beginChosen(viewer, child, path, stripped.day(), stripped.reason()));
    }

    private boolean isOn(Viewer viewer, ChildId child, String path) {
        return plans.plans(viewer, child).stream()
                .anyMatch(plan -> plan.plan().template().id().equals(path));
    }

    @Override
    @Transactional
    public Handout handout(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_CHOOSING, child);
        trail.looked(viewer, child, "choosing family page");
        return handouts.write(known(children.get(viewer, child), held(versions.newest(child))));
    }

    private static Viewer.Person person(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }
}
