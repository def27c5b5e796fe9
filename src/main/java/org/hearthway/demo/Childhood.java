package org.hearthway.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Homes;
import org.hearthway.child.Names;
import org.hearthway.child.engine.Nights;
import org.hearthway.path.Plans;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.sign.Signs;
import org.jspecify.annotations.Nullable;

/** Turns one child's story into acts: who did what, when. */
class Childhood {

    private static final LocalTime MORNING = LocalTime.of(9, 20);
    private static final LocalTime OFFICE = LocalTime.of(11, 5);
    private static final LocalTime EVENING = LocalTime.of(18, 40);
    private static final String COORDINATOR = "coordinator";
    private static final String NURSE = "nurse";

    private final ChildhoodFactory services;
    private final Story story;
    private final Map<String, Viewer.Person> persons;
    private final DemoDays days;
    private final Instant now;
    private @Nullable ChildId id;

    Childhood(
            ChildhoodFactory services, Story story, Map<String, Viewer.Person> persons, LocalDate today, Instant now) {
        this.services = services;
        this.story = story;
        this.persons = persons;
        this.days = new DemoDays(today, services.calendar(), services.clinic().zone());
        this.now = now;
    }

    void addTo(Acts acts) {
        acts.at(days.atWork(story.entered(), MORNING), this::enter);
        story.ways().forEach(way -> walk(way, acts));
        story.implanted()
                .ifPresent(pump ->
                        new Implant(services, days, this::person, this::child, pump, story.fills()).addTo(acts));
        story.stimulated()
                .ifPresent(made -> new Stimulator(services, days, this::person, this::child, made).addTo(acts));
        new Fitted(services, days, this::person, this::child, story).addTo(acts);
        story.versions().forEach(version -> acts.at(days.atWork(version.day(), OFFICE), () -> prescribe(version)));
        story.week().ifPresent(week -> acts.at(days.moment(week.day(), EVENING.plusMinutes(45)), () -> plan(week)));
        story.log().forEach(kept -> tick(kept, acts));
        story.said().forEach(said -> acts.at(days.moment(said.day(), EVENING.plusMinutes(20)), () -> say(said)));
        story.visits().forEach(visit -> new Appointment(services, days, this::person, this::child, visit).addTo(acts));
        story.told().forEach(told -> tell(told, acts));
        var shelf = new Shelf(services, days, this::person, this::child);
        story.medicines().forEach(medicine -> shelf.add(medicine, acts));
        story.toxin().forEach(session -> shelf.add(session, acts));
        story.tasks().forEach(task -> new Errand(services, days, this::person, this::child, task).addTo(acts));
        new Meeting(services, days, this::person, this::child, story).addTo(acts);
        story.helpers().forEach(helps -> acts.at(days.atWork(helps.asked(), OFFICE), () -> help(helps)));
    }

    private Viewer.Person person(String key) {
        return Optional.ofNullable(persons.get(key))
                .orElseThrow(() ->
                        new IllegalStateException("content/demo: nobody in people.yaml has the key \"" + key + "\""));
    }

    private ChildId child() {
        return java.util.Objects.requireNonNull(id, "a story begins with the child being entered");
    }

    private void enter() {
        var coordinator = person(COORDINATOR);
        id = services.register()
                .enter(
                        coordinator,
                        ChildData.plain(
                                Names.plain(story.usedName(), story.familyName()),
                                days.today().minus(story.age()),
                                story.gmfcs(),
                                story.skinTone()));
        story.caregivers()
                .forEach(cares -> services.households()
                        .link(coordinator, child(), person(cares.person()).account(), cares.reach()));
        story.caregivers().forEach(cares -> cares.lives().ifPresent(lives -> live(cares.person(), lives)));
    }

    private void live(String key, Story.Lives lives) {
        var turns = lives.turns() ? Optional.of(days.today()) : Optional.<LocalDate>empty();
        services.homes()
                .enter(
                        person(COORDINATOR),
                        child(),
                        person(key).account(),
                        new Homes.Home(
                                lives.relation(),
                                lives.authority(),
                                lives.address(),
                                "",
                                new Nights(lives.nights(), lives.otherNights(), turns),
                                false,
                                lives.keptApart(),
                                lives.note()),
                        0);
    }

    private void help(Story.Helps helps) {
        var parent = person(helps.consent());
        services.helpers()
                .link(
                        parent,
                        child(),
                        person(helps.person()).account(),
                        new Help(
                                helps.kind(),
                                days.on(helps.lastDay()),
                                new Consent(parent.account(), days.open(helps.asked()))),
                        0);
    }

    private void walk(Story.Way way, Acts acts) {
        var begun = Math.max(way.begun(), story.entered());
        acts.at(
                days.atWork(begun, OFFICE),
                () -> services.plans()
                        .begin(
                                person(way.by()),
                                child(),
                                way.pathway(),
                                way.equals(story.ways().get(0)) ? Plans.Beginning.INSTEAD : Plans.Beginning.BESIDE,
                                days.open(way.begun()),
                                way.reason()));
        way.fixed()
                .forEach(fixed -> acts.at(days.atWork(fixed.done(), OFFICE.plusMinutes(10)), () -> {
                    var seen = services.plans()
                            .plans(person(way.by()), child())
                            .get(0)
                            .version();
                    services.plans()
                            .apply(
                                    person(way.by()),
                                    child(),
                                    way.pathway(),
                                    new Plans.Change.Fix(fixed.stage(), days.open(fixed.day())),
                                    fixed.reason(),
                                    seen);
                }));
    }

    private void prescribe(Story.Version version) {
        var author = person(version.by());
        var from = days.open(version.day());
        var seen = services.programs()
                .latest(author, child())
                .map(Programs.Version::number)
                .orElse(0);
        services.programs()
                .save(
                        author,
                        child(),
                        new Programs.Draft(
                                from,
                                version.lines().stream()
                                        .map(line -> line(line, from, version))
                                        .toList(),
                                version.reason()),
                        seen);
    }

    private ProgramLine line(Story.Line line, LocalDate from, Story.Version version) {
        var exercise = services.library()
                .find(line.exercise())
                .orElseThrow(() -> new IllegalStateException("content/demo: no exercise " + line.exercise()));
        var dose = line.dose().orElseGet(exercise::usual);
        var plain =
                ProgramLine.of(line.exercise(), dose, line.side(), line.days(), from, Optional.empty(), line.note());
        var asked = plain.prescription();
        var years = services.register().get(person(version.by()), child()).ageOn(from);
        var outside = exercise.usualFor(years).outside(dose, asked.rhythm().days());
        return new ProgramLine(
                line.exercise(),
                new Prescription(
                        asked.dose(),
                        asked.restSeconds(),
                        asked.side(),
                        asked.load(),
                        asked.rhythm(),
                        asked.effort(),
                        line.more()),
                line.days(),
                from,
                Optional.empty(),
                line.note(),
                plain.priority(),
                outside.isEmpty() ? "" : version.reason(),
                List.of());
    }

    private void plan(Story.Week week) {
        services.times()
                .save(
                        person(week.by()),
                        child(),
                        new FamilyTimes.Times(
                                week.times().stream()
                                        .flatMap(one -> one.days().stream()
                                                .map(day -> new FamilyTimes.Slot(
                                                        day, one.at(), one.minutes(), one.helpers())))
                                        .toList(),
                                week.busy().stream()
                                        .flatMap(one -> one.days().stream()
                                                .map(day ->
                                                        new FamilyTimes.Busy(day, one.from(), one.until(), one.what())))
                                        .toList(),
                                week.most()),
                        0);
    }

    private void tick(Story.Kept kept, Acts acts) {
        var marks = kept.marks();
        for (int i = 0; i < marks.length(); i++) {
            var at = i;
            var mark = marks.charAt(at);
            var day = at - marks.length();
            Story.Kept.outcome(mark)
                    .ifPresent(outcome -> acts.at(days.moment(day, EVENING), () -> {
                        var date = days.on(day);
                        if (isPlanned(kept.exercise(), date)) {
                            var could = outcome != Outcome.COULD_NOT;
                            log(
                                    kept.exercise(),
                                    kept.by(),
                                    date,
                                    outcome,
                                    could ? Optional.empty() : Optional.of(Story.Kept.reason(mark)),
                                    could ? kept.effort(at) : Optional.empty(),
                                    could ? kept.pain(at) : Optional.empty(),
                                    kept.ratedBy(),
                                    "");
                        }
                    }));
        }
    }

    private boolean isPlanned(String exercise, LocalDate date) {
        return services.week().days(person(NURSE), child(), date, 1).get(0).planned().stream()
                .anyMatch(planned -> planned.exercise().id().equals(exercise));
    }

    private void say(Story.Said said) {
        var date = days.on(said.day());
        log(
                said.exercise(),
                said.by(),
                date,
                said.outcome(),
                said.reason(),
                said.effort(),
                said.pain(),
                RatedBy.CHILD,
                said.note());
    }

    private void log(
            String exercise,
            String by,
            LocalDate day,
            Outcome outcome,
            Optional<Reason> reason,
            Optional<Integer> effort,
            Optional<Integer> pain,
            RatedBy rater,
            String note) {
        var rated = effort.isPresent() || pain.isPresent() ? Optional.of(rater) : Optional.<RatedBy>empty();
        services.week()
                .log(
                        person(by),
                        child(),
                        new HomeWeek.Entry(
                                UUID.randomUUID(), exercise, day, outcome, reason, effort, pain, rated, note));
    }

    private void tell(Story.Told told, Acts acts) {
        var key = UUID.randomUUID();
        var at = now.minus(Duration.ofMinutes(told.minutesAgo()));
        acts.at(
                at,
                () -> services.signs()
                        .report(
                                person(told.by()),
                                child(),
                                new Signs.ReportData(
                                        key, List.copyOf(told.signs()), told.called(), told.note(), told.teamOnly())));
        if (told.read()) {
            acts.at(at.plus(Duration.ofMinutes(35)), () -> services.signs().read(person(NURSE), child(), key));
        }
    }
}
