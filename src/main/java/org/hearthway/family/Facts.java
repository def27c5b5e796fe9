package org.hearthway.family;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Pumps;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** The two facts at the foot of Today: the next date or a refill without one, and where on the path we are. */
@Component
class Facts {

    private static final int A_STAGE_OF_WEEKS = 21;

    private final Visits visits;
    private final FamilyPlans plans;
    private final Pumps pumps;

    Facts(Visits visits, FamilyPlans plans, Pumps pumps) {
        this.visits = visits;
        this.plans = plans;
        this.pumps = pumps;
    }

    com.vaadin.flow.component.Component pair(Reader reader) {
        var facts = Tags.div("hw-pair", next(reader));
        where(reader).forEach(facts::add);
        return facts;
    }

    private com.vaadin.flow.component.Component next(Reader reader) {
        var coming = visits.upcoming(reader.viewer(), reader.id());
        var refill = pumps.current(reader.viewer(), reader.id())
                .map(fill -> fill.refillBy().day())
                .filter(day -> RefillCard.visit(coming).isEmpty())
                .filter(day ->
                        coming.isEmpty() || !day.isAfter(coming.get(0).start().toLocalDate()));
        if (refill.isPresent()) {
            return fact(
                    reader,
                    "dates",
                    Icon.REFILL,
                    reader.say("family.next.refill", refill.get()),
                    reader.say("family.next.refill.then"));
        }
        if (coming.isEmpty()) {
            return fact(
                    reader, "dates", Icon.DATES, reader.say("family.next.none"), reader.say("family.next.none.then"));
        }
        var visit = coming.get(0);
        return fact(
                reader,
                "dates",
                Icon.DATES,
                reader.large(reader.date(visit.start().toLocalDate())),
                reader.say("family.next.at", visit.start().toLocalTime(), answer(reader, visit)));
    }

    private static String answer(Reader reader, Visit visit) {
        return reader.say("family.next." + visit.answer());
    }

    /** The present stage of each path that goes on. */
    private List<com.vaadin.flow.component.Component> where(Reader reader) {
        var stages = plans.plans(reader).stream()
                .flatMap(plan -> where(reader, plan).stream())
                .toList();
        return stages.isEmpty()
                ? List.of(fact(
                        reader,
                        "path",
                        Icon.PATH,
                        reader.say("family.where.none"),
                        reader.say("family.where.none.then")))
                : stages;
    }

    private static Optional<com.vaadin.flow.component.Component> where(Reader reader, Plan plan) {
        return plan.now().map(now -> now(reader, now)).or(() -> plan.stages().stream()
                .filter(stage -> stage.state() == Plan.State.TO_COME)
                .findFirst()
                .map(first -> fact(
                        reader,
                        "path",
                        Icon.PATH,
                        reader.text(first.stage().name()),
                        reader.say("family.where.from", first.start()))));
    }

    private static com.vaadin.flow.component.Component now(Reader reader, Plan.Planned now) {
        var name = reader.text(now.stage().name());
        if (PathWords.isWithoutEnd(now)) {
            var since = reader.say("family.where.since", PathWords.date(reader, now.start()));
            return fact(reader, "path", Icon.PATH, name, since);
        }
        if (ChronoUnit.DAYS.between(now.start(), now.end()) < A_STAGE_OF_WEEKS) {
            return fact(reader, "path", Icon.PATH, name, PathWords.until(reader, now));
        }
        return fact(reader, "path", Icon.PATH, PathWords.week(reader, now), name);
    }

    private static com.vaadin.flow.component.Component fact(
            Reader reader, String place, Icon icon, String large, String small) {
        var key = Tags.span("k", icon.draw("sm"));
        key.add(Tags.span("", reader.say("family.fact." + place)));
        return Tags.link("hw-fact", reader.address(place), key, Tags.span("v", large), Tags.p("d", small));
    }
}
