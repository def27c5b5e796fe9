package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;

/** The path as one straight column: behind us folded, now lit with what to do, ahead with its dates and why. */
@Route("my/:child/path")
@PermitAll
class PathView extends FamilyPage {

    private final transient FamilyPlans plans;
    private final transient Visits visits;
    private final transient Alongside alongside;

    PathView(Readers readers, FamilyPlans plans, Visits visits, Alongside alongside) {
        super(readers);
        this.plans = plans;
        this.visits = visits;
        this.alongside = alongside;
    }

    @Override
    Place place() {
        return Place.PATH;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.path");
    }

    @Override
    void draw(Reader reader) {
        var all = plans.plans(reader);
        all.forEach(plan -> way(reader, plan));
        if (all.isEmpty()) {
            add(none(reader));
        }
        alongside.link(reader).ifPresent(link -> add(Tags.div("u-mt5", link)));
    }

    private Component none(Reader reader) {
        return plans.isHeldBack(reader)
                ? none(reader, reader.say("family.path.unread"), reader.say("family.path.unread.then"))
                : none(reader, reader.say("family.path.none"), reader.say("family.path.none.then"));
    }

    private static Component none(Reader reader, String title, String then) {
        return Tags.div("", Bits.hero(reader.say("family.path.of", reader.name()), title), Tags.p("u-lead", then));
    }

    private void way(Reader reader, Plan plan) {
        var past =
                plan.stages().stream().filter(s -> s.state() == Plan.State.PAST).toList();
        var coming = plan.next().stream()
                .filter(s -> s.state() == Plan.State.TO_COME)
                .toList();
        var title = plan.now()
                .map(now -> reader.text(now.stage().name()))
                .orElseGet(() -> reader.say(coming.isEmpty() ? "family.path.over" : "family.path.before"));
        add(Bits.hero(
                reader.say("family.path.of", reader.name()) + " · "
                        + reader.text(plan.template().name()),
                title));
        plan.now()
                .ifPresent(now -> add(Tags.p(
                        "hw-quiet hw-whereabouts",
                        reader.say(
                                "family.path.stone",
                                plan.next().indexOf(now) + 1,
                                plan.next().size()))));
        plan.over().ifPresent(over -> add(over(reader, over)));
        if (!past.isEmpty()) {
            add(behind(reader, past));
        }
        var way = Bits.el("ol", "hw-way");
        plan.now().ifPresent(now -> way.add(now(reader, plan, now, !past.isEmpty())));
        for (int i = 0; i < coming.size(); i++) {
            way.add(later(reader, plan, coming.get(i), i));
        }
        add(way);
        if (!coming.isEmpty()) {
            add(Bits.strip("quiet", Icon.INFO, reader.say("family.path.between.means")));
        }
    }

    /** Why the path ended, in words of its outcome, and that the talk goes on. */
    private static Component over(Reader reader, Plan.Over over) {
        var says = over.outcome()
                .flatMap(Template.Outcome::tells)
                .map(reader::text)
                .orElse("");
        return Bits.strip(
                "quiet",
                Icon.INFO,
                (says + " " + reader.say("family.path.ended", PathWords.date(reader, over.day()))).strip());
    }

    private static Component behind(Reader reader, List<Planned> past) {
        var last = past.get(past.size() - 1);
        var count = Tags.span("n", reader.say("family.path.behind", past.size()));
        count.add(Bits.el(
                "span",
                "hw-s hw-quiet u-thin u-block",
                reader.say("family.path.last", reader.text(last.stage().name()), PathWords.was(reader, last))));
        var summary =
                Bits.el("summary", "hw-fold", PathStones.behind(Math.min(past.size(), 4)), count, Icon.DOWN.draw());
        var list = Bits.el("ul", "hw-behind");
        for (var stage : past) {
            list.add(Bits.el(
                    "li",
                    "",
                    Bits.pip("done"),
                    Tags.span(
                            "",
                            Bits.el("b", "hw-b", reader.text(stage.stage().name())),
                            Bits.el("small", "", PathWords.was(reader, stage)))));
        }
        return Bits.el("details", "hw-past", summary, list);
    }

    private HtmlContainer now(Reader reader, Plan plan, Planned now, boolean somethingBehind) {
        var card = Tags.div(
                "now",
                Bits.el(
                        "h2",
                        "",
                        reader.say("family.path.now", reader.text(now.stage().name()))),
                Tags.p("win", dates(reader, now)),
                Tags.p("u-mt1", reader.text(now.stage().says())));
        if (!now.stage().duties().family().isEmpty() || !now.visits().isEmpty()) {
            var tasks = Bits.el("ul", "hw-tasks plain");
            now.stage().duties().family().forEach(task -> tasks.add(task(Tags.span("", reader.text(task.does())), "")));
            visitTasks(reader, now, tasks);
            card.add(tasks);
        }
        card.add(why(reader, plan, now));
        var row = Bits.el("li", somethingBehind ? "here" : "here first", PathStones.now(), card);
        row.getElement().setAttribute("aria-current", "step");
        return row;
    }

    private static String dates(Reader reader, Planned now) {
        if (now.start().equals(now.end())) {
            return reader.large(reader.say("family.path.on", PathWords.date(reader, now.start())));
        }
        if (PathWords.isWithoutEnd(now)) {
            return reader.say("family.path.since", PathWords.date(reader, now.start()));
        }
        return reader.say(
                "family.path.since-until", PathWords.date(reader, now.start()), PathWords.date(reader, now.end()));
    }

    /** The visits that the stage asks for: booked, with what is to answer, or without a day yet. */
    private void visitTasks(Reader reader, Planned now, HtmlContainer tasks) {
        if (now.visits().isEmpty()) {
            return;
        }
        var booked = visits.upcoming(reader.viewer(), reader.id());
        for (var window : now.visits()) {
            booked.stream()
                    .filter(visit ->
                            visit.purpose().filter(window.purpose()::equals).isPresent())
                    .findFirst()
                    .ifPresent(visit -> tasks.add(visitTask(reader, visit)));
        }
    }

    private static HtmlContainer visitTask(Reader reader, Visit visit) {
        var name = reader.text(visit.kind().name());
        var day = visit.start().toLocalDate();
        return visit.answer() == Visit.Answer.CONFIRMED
                ? task(Tags.span("", reader.say("family.path.visit", name, day)), "done")
                : task(Tags.link("", reader.address("dates"), reader.say("family.path.visit.confirm", name, day)), "");
    }

    private static HtmlContainer task(Component words, String state) {
        return Bits.el("li", "", Bits.pip(state), words);
    }

    private HtmlContainer later(Reader reader, Plan plan, Planned stage, int distance) {
        return Bits.el(
                "li",
                "",
                PathStones.later(distance),
                Tags.div(
                        "",
                        Bits.el("h2", "", reader.text(stage.stage().name())),
                        Tags.p("win", PathWords.begins(reader, stage)),
                        why(reader, plan, stage)));
    }

    private Component why(Reader reader, Plan plan, Planned stage) {
        var why = Tags.p("hw-why", "");
        why.add(Bits.el("b", "", reader.say("family.why.then") + " "), Tags.span("", plans.why(reader, plan, stage)));
        return why;
    }
}
