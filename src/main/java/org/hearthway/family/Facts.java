package org.hearthway.family;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.RefillWindow;
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

    Div pair(Reader reader) {
        var facts = Tags.div("hw-pair", next(reader));
        where(reader).forEach(facts::add);
        facts.add(fact(
                reader,
                "quilt",
                reader.say("family.quilt.fact"),
                Icon.QUILT,
                reader.say("family.quilt.see"),
                reader.say("family.quilt.see.then")));
        return facts;
    }

    private Anchor next(Reader reader) {
        var coming = visits.upcoming(reader.viewer(), reader.id());
        var refill = pumps.refill(reader.viewer(), reader.id())
                .flatMap(Refill::window)
                .filter(window -> RefillCard.visit(coming, window).isEmpty())
                .map(RefillWindow::day)
                .filter(day ->
                        coming.isEmpty() || !day.isAfter(coming.get(0).start().toLocalDate()));
        if (refill.isPresent()) {
            return fact(
                    reader,
                    "dates",
                    reader.say("family.fact.dates"),
                    Icon.REFILL,
                    reader.say("family.next.refill", refill.get()),
                    reader.say("family.next.refill.then"));
        }
        if (coming.isEmpty()) {
            return fact(
                    reader,
                    "dates",
                    reader.say("family.fact.dates"),
                    Icon.DATES,
                    reader.say("family.next.none"),
                    reader.say("family.next.none.then"));
        }
        var visit = coming.get(0);
        return fact(
                reader,
                "dates",
                reader.say("family.fact.dates"),
                Icon.DATES,
                reader.large(reader.date(visit.start().toLocalDate())),
                reader.say("family.next.at", visit.start().toLocalTime(), answer(reader, visit)));
    }

    private static String answer(Reader reader, Visit visit) {
        return reader.say("family.next." + visit.answer());
    }

    /** The present stage of each path that goes on; each under the path's name where there are several. */
    private List<Anchor> where(Reader reader) {
        var all = plans.plans(reader).stream()
                .filter(plan -> stands(plan).isPresent())
                .toList();
        if (all.isEmpty()) {
            return List.of(fact(
                    reader,
                    "path",
                    reader.say("family.fact.path"),
                    Icon.PATH,
                    reader.say("family.where.none"),
                    reader.say("family.where.none.then")));
        }
        return all.stream()
                .map(plan -> where(
                        reader,
                        all.size() > 1 ? reader.text(plan.template().name()) : reader.say("family.fact.path"),
                        stands(plan).orElseThrow()))
                .toList();
    }

    /** The present stage, or the first to come. */
    private static Optional<Plan.Planned> stands(Plan plan) {
        return plan.now()
                .or(() -> plan.stages().stream()
                        .filter(stage -> stage.state() == Plan.State.TO_COME)
                        .findFirst());
    }

    private static Anchor where(Reader reader, String label, Plan.Planned stage) {
        var name = reader.text(stage.stage().name());
        if (stage.state() == Plan.State.TO_COME) {
            return fact(reader, "path", label, Icon.PATH, name, reader.say("family.where.from", stage.start()));
        }
        if (PathWords.isWithoutEnd(stage)) {
            var since = reader.say("family.where.since", PathWords.date(reader, stage.start()));
            return fact(reader, "path", label, Icon.PATH, name, since);
        }
        return ChronoUnit.DAYS.between(stage.start(), stage.end()) < A_STAGE_OF_WEEKS
                ? fact(reader, "path", label, Icon.PATH, name, PathWords.until(reader, stage))
                : fact(reader, "path", label, Icon.PATH, PathWords.week(reader, stage), name);
    }

    private static Anchor fact(Reader reader, String place, String label, Icon icon, String large, String small) {
        var key = Tags.span("k", icon.draw("sm"));
        key.add(Tags.span("", label));
        return Tags.link("hw-fact", reader.address(place), key, Tags.span("v", large), Tags.p("d", small));
    }
}
