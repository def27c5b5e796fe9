package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.sign.CallLines;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;

/** The dates: the refill, the stimulator, visits to say yes to, visits that stand, and visits that have no day yet. */
@Route("my/:child/dates")
@PermitAll
class DatesView extends FamilyPage {

    private static final int PAST_READ = 40;
    /** What lies further ahead stands on the path. */
    static final int DAYS_AHEAD = 90;

    private static final int OPEN_SHOWN = 4;

    private final transient Visits visits;
    private final transient FamilyPlans plans;
    private final transient PathNews.Source news;
    private final transient StageVisits.Source ofStages;
    private final transient Pumps pumps;
    private final transient RefillSigns refillSigns;
    private final transient Stimulators stimulators;
    private final transient Gate gate;
    private final transient CallLines lines;
    private final transient Pause pauses;
    private final transient Alongside alongside;
    private final transient Todos todos;

    DatesView(
            Readers readers,
            Visits visits,
            FamilyPlans plans,
            PathNews.Source news,
            StageVisits.Source ofStages,
            Pumps pumps,
            RefillSigns refillSigns,
            Stimulators stimulators,
            Gate gate,
            CallLines lines,
            Pause pauses,
            Alongside alongside,
            Todos todos) {
        super(readers);
        this.visits = visits;
        this.plans = plans;
        this.news = news;
        this.ofStages = ofStages;
        this.pumps = pumps;
        this.refillSigns = refillSigns;
        this.stimulators = stimulators;
        this.gate = gate;
        this.lines = lines;
        this.pauses = pauses;
        this.alongside = alongside;
        this.todos = todos;
    }

    @Override
    Place place() {
        return Place.DATES;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.dates");
    }

    @Override
    void draw(Reader reader) {
        var coming = visits.upcoming(reader.viewer(), reader.id());
        var mayAnswer = gate.allows(reader.viewer(), Action.ANSWER_VISIT, reader.id()) && !pauses.asksNothing(reader);
        var longDate = reader.words().longDate(reader.language(), reader.today());
        add(Bits.hero(reader.large(longDate), reader.say("family.dates.of", reader.name())));
        var list = Tags.div("hw-stack u-gap3");
        pumps.refill(reader.viewer(), reader.id()).ifPresent(refill -> list.add(refill(reader, refill, coming)));
        pumps.unfilledSince(reader.viewer(), reader.id())
                .ifPresent(since -> list.add(RefillCard.withoutDay(reader, RefillCard.visit(coming))));
        var fresh = news.of(reader);
        var moved = ofStages.of(reader, fresh);
        coming.forEach(visit -> list.add(new VisitCard(
                reader,
                visit,
                moved.was(visit),
                mayAnswer,
                visits.isDisputed(reader.viewer(), visit.id()),
                answers(reader))));
        stimulators.outlook(reader.viewer(), reader.id()).stream()
                .filter(StimulatorCard::isNeeded)
                .forEach(outlook -> list.add(new StimulatorCard(reader, outlook, !pauses.asksNothing(reader))));
        todos.list(reader, Integer.MAX_VALUE, this::refresh).ifPresent(list::add);
        var open = open(reader, coming);
        open.forEach(window -> list.add(new OpenVisit(reader, window, name(reader, window), fresh)));
        if (list.getComponentCount() == 0) {
            list.add(Tags.p("u-lead", reader.say("family.dates.none")));
        }
        if (!open.isEmpty()) {
            list.add(Bits.strip("quiet", Icon.INFO, reader.say("family.dates.we-send")));
        }
        alongside.link(reader).ifPresent(list::add);
        if (!mayAnswer) {
            list.add(Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only")));
        }
        add(list);
    }

    private Component refill(Reader reader, Refill refill, List<Visit> coming) {
        if (refill.beingChecked()) {
            return RefillCard.beingChecked(reader, refill.filled(), refillSigns);
        }
        return refill.window()
                .<Component>map(window ->
                        new RefillCard(reader, window, RefillCard.visit(coming, window), lines.lines(), refillSigns))
                .orElseGet(() -> RefillCard.withoutDay(reader, RefillCard.visit(coming)));
    }

    private VisitCard.Answers answers(Reader reader) {
        return new VisitCard.Answers() {
            @Override
            public void confirm(Visit visit) {
                answer(
                        reader,
                        "family.dates.thanks",
                        () -> visits.confirm(reader.viewer(), visit.id(), visit.sequence()));
            }

            @Override
            public boolean askToMove(Visit visit, String wish) {
                return answer(
                        reader,
                        "family.dates.asked",
                        () -> visits.askToMove(reader.viewer(), visit.id(), visit.sequence(), wish));
            }
        };
    }

    private boolean answer(Reader reader, String done, Runnable answer) {
        var taken = true;
        try {
            answer.run();
            Told.done(reader.say(done));
        } catch (Overtaken moved) {
            taken = false;
            Told.couldNot(reader.say("family.dates.moved"));
        }
        refresh();
        return taken;
    }

    /** What the path asks for in the time ahead and nobody has booked, soonest first. */
    private List<Plan.VisitWindow> open(Reader reader, List<Visit> coming) {
        var past = visits.past(reader.viewer(), reader.id(), PAST_READ);
        var known = Stream.concat(coming.stream(), past.stream())
                .flatMap(visit -> visit.purpose().stream())
                .toList();
        var horizon = reader.today().plusDays(DAYS_AHEAD);
        return plans.plans(reader).stream()
                .flatMap(plan -> plan.stages().stream())
                .flatMap(stage -> stage.visits().stream())
                .filter(window -> !known.contains(window.purpose()))
                .filter(window -> !window.until().isBefore(reader.today()))
                .filter(window -> !window.from().isAfter(horizon))
                .sorted(Comparator.comparing(Plan.VisitWindow::from))
                .limit(OPEN_SHOWN)
                .toList();
    }

    private String name(Reader reader, Plan.VisitWindow window) {
        return visits.kinds().stream()
                .filter(kind -> kind.id().equals(window.kind()))
                .findFirst()
                .map(kind -> reader.text(kind.name()))
                .orElseGet(() -> reader.say("family.dates.a-visit"));
    }
}
