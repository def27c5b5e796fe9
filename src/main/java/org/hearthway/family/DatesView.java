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
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Pumps;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;

/** The dates: the refill, visits to say yes to, visits that stand, and visits that have no day yet. */
@Route("my/:child/dates")
@PermitAll
class DatesView extends FamilyPage {

    private static final int PAST_READ = 40;
    private static final int DAYS_AHEAD = 200;

    private final transient Visits visits;
    private final transient Plans plans;
    private final transient Pumps pumps;
    private final transient Gate gate;
    private final transient CallRows.Numbers numbers;

    DatesView(Readers readers, Visits visits, Plans plans, Pumps pumps, Gate gate, CallRows.Numbers numbers) {
        super(readers);
        this.visits = visits;
        this.plans = plans;
        this.pumps = pumps;
        this.gate = gate;
        this.numbers = numbers;
    }

    @Override
    Place place() {
        return Place.DATES;
    }

    @Override
    String title(Reader reader) {
        return reader.say("place.dates");
    }

    @Override
    void draw(Reader reader) {
        var coming = visits.upcoming(reader.viewer(), reader.id());
        var mayAnswer = gate.allows(reader.viewer(), Action.ANSWER_VISIT, reader.id());
        var longDate = reader.words().longDate(reader.language(), reader.today());
        add(Bits.hero(reader.large(longDate), reader.say("dates.of", reader.name())));
        var list = Tags.div("hw-stack u-gap3");
        pumps.current(reader.viewer(), reader.id()).ifPresent(fill -> {
            var card = new RefillCard(reader, fill.refillBy(), RefillCard.visit(coming), numbers);
            list.add(card);
        });
        coming.forEach(visit -> list.add(new VisitCard(reader, visit, mayAnswer, answers(reader))));
        open(reader, coming).forEach(window -> list.add(noDay(reader, window)));
        if (list.getComponentCount() == 0) {
            list.add(Tags.p("u-lead", reader.say("dates.none")));
        }
        if (!mayAnswer) {
            list.add(Bits.strip("quiet", Icon.LOCK, reader.say("view-only")));
        }
        add(list);
    }

    private VisitCard.Answers answers(Reader reader) {
        return new VisitCard.Answers() {
            @Override
            public void confirm(Visit visit) {
                answer(reader, "dates.thanks", () -> visits.confirm(reader.viewer(), visit.id(), visit.sequence()));
            }

            @Override
            public void askToMove(Visit visit, String wish) {
                answer(
                        reader,
                        "dates.asked",
                        () -> visits.askToMove(reader.viewer(), visit.id(), visit.sequence(), wish));
            }
        };
    }

    private void answer(Reader reader, String done, Runnable answer) {
        try {
            answer.run();
            Told.done(reader.say(done));
        } catch (Overtaken moved) {
            Told.couldNot(reader.say("dates.moved"));
        }
        refresh();
    }

    /** What the path asks for in the time ahead and nobody has booked, soonest first. */
    private List<Plan.VisitWindow> open(Reader reader, List<Visit> coming) {
        var plan = plans.plan(reader.viewer(), reader.id());
        if (plan.isEmpty()) {
            return List.of();
        }
        var past = visits.past(reader.viewer(), reader.id(), PAST_READ);
        var known = Stream.concat(coming.stream(), past.stream())
                .flatMap(visit -> visit.purpose().stream())
                .toList();
        var horizon = reader.today().plusDays(DAYS_AHEAD);
        return plan.get().plan().stages().stream()
                .flatMap(stage -> stage.visits().stream())
                .filter(window -> !known.contains(window.purpose()))
                .filter(window -> !window.until().isBefore(reader.today()))
                .filter(window -> !window.from().isAfter(horizon))
                .sorted(Comparator.comparing(Plan.VisitWindow::from))
                .toList();
    }

    private Component noDay(Reader reader, Plan.VisitWindow window) {
        var name = visits.kinds().stream()
                .filter(kind -> kind.id().equals(window.kind()))
                .findFirst()
                .map(kind -> reader.text(kind.name()))
                .orElseGet(() -> reader.say("dates.a-visit"));
        var from = window.from().isBefore(reader.today()) ? reader.today() : window.from();
        var leaf = Tags.div(
                "hw-leaf",
                Tags.span("", reader.words().shortMonth(reader.language(), from)),
                Bits.el("b", "long", reader.say("dates.span", days(from, window))),
                Tags.span("", reader.say("dates.no-day")));
        return Bits.el(
                "article",
                "hw-visit",
                leaf,
                Tags.div(
                        "",
                        Bits.el("h2", "name u-plain", name),
                        Tags.p(
                                "meta",
                                reader.say(
                                        "dates.between",
                                        PathWords.date(reader, from),
                                        PathWords.date(reader, window.until()))),
                        Tags.p("meta", reader.say("dates.we-send"))));
    }

    /** The days on the leaf: "4–22", or the first day alone when the window ends in another month. */
    private static String days(java.time.LocalDate from, Plan.VisitWindow window) {
        var until = window.until();
        return from.getMonth() == until.getMonth() && from.getYear() == until.getYear() && !from.equals(until)
                ? from.getDayOfMonth() + "–" + until.getDayOfMonth()
                : String.valueOf(from.getDayOfMonth());
    }
}
