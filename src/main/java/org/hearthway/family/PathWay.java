package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Section;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template;

/** One path as one straight column: behind us folded, now lit with what to do, next with what to get ready, then dates. */
class PathWay extends Section {

    /** What a stage needs, drawn for this reader. */
    interface Needs {
        /** What to do, visits, what to mind. */
        List<Component> now(Plan plan, Planned stage);

        /** What to do and visits. */
        List<Component> besides(Plan plan, Planned stage);

        /** What to get ready. */
        List<Component> next(Plan plan, Planned stage);

        /** The day on which it is booked, for a stage of a day. */
        Optional<LocalDate> booked(Planned stage);

        /** Why the stage begins when it does. */
        String why(Plan plan, Planned stage);
    }

    private final transient Reader reader;
    private final transient Plan plan;
    private final transient PathNews news;
    private final transient Needs needs;

    PathWay(Reader reader, Plan plan, PathNews news, Needs needs) {
        this.reader = reader;
        this.plan = plan;
        this.news = news;
        this.needs = needs;
        addClassName("hw-path");
        var past = lying(Plan.State.PAST);
        var besides = lying(Plan.State.NOW).stream()
                .filter(stage -> stage.state() != Plan.State.NOW)
                .toList();
        var coming = lying(Plan.State.TO_COME);
        add(
                head(),
                Tags.p(
                        "hw-quiet hw-whereabouts",
                        place(past.size() + plan.before().size(), besides.size() + coming.size())));
        plan.over().ifPresent(over -> add(over(over)));
        changes().ifPresent(this::add);
        var somethingBehind = !past.isEmpty() || !plan.before().isEmpty();
        if (somethingBehind) {
            add(behind(past));
        }
        var way = Bits.el("ol", "hw-way");
        way.getElement().setAttribute("role", "list");
        plan.now().ifPresent(now -> way.add(now(now, somethingBehind)));
        besides.forEach(stage -> way.add(besides(stage)));
        for (int i = 0; i < coming.size(); i++) {
            way.add(later(coming, i));
        }
        add(way);
        if (!coming.isEmpty()) {
            add(Bits.strip("quiet", Icon.INFO, reader.say("family.path.between.means")));
        }
    }

    private List<Planned> lying(Plan.State state) {
        return plan.next().stream()
                .filter(stage -> PathWords.lies(reader, stage) == state)
                .toList();
    }

    private Component head() {
        var name = reader.text(plan.template().name());
        getElement().setAttribute("aria-label", name);
        return Bits.el("h2", "", name);
    }

    /** Where we are, in one line; a stage may lie behind that stands after the present one. */
    private String place(int behind, int ahead) {
        return plan.now().isPresent()
                ? reader.say("family.path.stone", behind + 1, behind + 1 + ahead)
                : reader.say(ahead == 0 ? "family.path.over" : "family.path.before");
    }

    /** Why the path ended, in words of its outcome, and that the talk goes on. */
    private Component over(Plan.Over over) {
        var says = over.outcome()
                .flatMap(Template.Outcome::tells)
                .map(reader::text)
                .orElse("");
        return Bits.strip(
                "quiet",
                Icon.INFO,
                (says + " " + reader.say("family.path.ended", PathWords.date(reader, over.day()))).strip());
    }

    /** How many dates moved, and what left the path; the dates themselves stand where they belong, the old ones struck. */
    private Optional<Component> changes() {
        var moved = (int) plan.next().stream()
                .filter(stage -> news.was(plan, stage).isPresent())
                .count();
        var gone = news.gone(plan);
        if (moved == 0 && gone.isEmpty()) {
            return Optional.empty();
        }
        var words = Tags.div("");
        if (moved > 0) {
            words.add(Tags.span("", reader.say("family.path.moved", moved) + " "));
        }
        if (!gone.isEmpty()) {
            words.add(Tags.span("", reader.say("family.path.gone") + " "), Bits.el("s", "hw-was", reader.list(gone)));
        }
        return Optional.of(Bits.strip("", Icon.MOVE, words));
    }

    /** What was done before the path began here and of which nobody knows the day, then what has a day. */
    private Component behind(List<Planned> past) {
        var before = plan.before();
        int many = before.size() + past.size();
        var count = Tags.span("n", reader.say("family.path.behind", many));
        count.add(Bits.el("span", "hw-s hw-quiet u-thin u-block", lastOf(past)));
        var summary = Bits.el("summary", "hw-fold", PathStones.behind(Math.min(many, 4)), count, Icon.DOWN.draw());
        var list = Bits.el("ol", "hw-behind");
        list.getElement().setAttribute("role", "list");
        for (var stage : before) {
            var words = Tags.span("", Bits.el("b", "hw-b", reader.text(stage.name())));
            words.add(Bits.el("small", "", reader.say("family.path.done-before")));
            list.add(Bits.el("li", "", Bits.pip("done"), words));
        }
        for (var stage : past) {
            var words =
                    Tags.span("", Bits.el("b", "hw-b", reader.text(stage.stage().name())));
            words.add(when(stage, "small", ""));
            list.add(Bits.el("li", "", Bits.pip("done"), words));
        }
        return Bits.el("details", "hw-past", summary, list);
    }

    private String lastOf(List<Planned> past) {
        if (past.isEmpty()) {
            var before = plan.before();
            return reader.say(
                    "family.path.last",
                    reader.text(before.get(before.size() - 1).name()),
                    reader.say("family.path.done-before"));
        }
        var last = past.get(past.size() - 1);
        return reader.say("family.path.last", reader.text(last.stage().name()), PathWords.was(reader, last));
    }

    /** When a stage is; the old words stand struck behind the new ones. */
    private HtmlContainer when(Planned stage, String tag, String classes) {
        var when = Bits.el(tag, classes, Tags.span("", told(stage)));
        if (news.isNew(plan, stage)) {
            when.add(Tags.span("hw-new", reader.say("family.path.new")));
        }
        news.was(plan, stage).map(words -> PathNews.struck(reader, words)).ifPresent(when::add);
        return when;
    }

    /** A day that the family has in hand is told before the days that it could be. */
    private String told(Planned stage) {
        return booked(stage)
                .map(day -> reader.say("family.path.on", PathWords.day(reader, day)))
                .orElseGet(() -> PathWords.when(reader, stage));
    }

    private Optional<LocalDate> booked(Planned stage) {
        return stage.state() == Plan.State.TO_COME ? needs.booked(stage) : Optional.empty();
    }

    /** The day of a stage ahead, once it stands. */
    private Optional<LocalDate> day(Planned stage) {
        return booked(stage).or(() -> PathWords.isFixed(stage) ? Optional.of(stage.start()) : Optional.empty());
    }

    private HtmlContainer now(Planned now, boolean somethingBehind) {
        var card = Tags.div(
                "now",
                Bits.el(
                        "h3",
                        "",
                        reader.say("family.path.now", reader.text(now.stage().name()))),
                when(now, "p", "win"),
                Tags.p("u-mt1", reader.text(now.stage().says())));
        needs.now(plan, now).forEach(card::add);
        card.add(why(now));
        var row = Bits.el("li", somethingBehind ? "here" : "here first", PathStones.now(), card);
        row.getElement().setAttribute("aria-current", "step");
        return row;
    }

    /** A stage that began before and goes on beside the present one. */
    private HtmlContainer besides(Planned stage) {
        var words = Tags.div(
                "later",
                Bits.el(
                        "h3",
                        "",
                        reader.say(
                                "family.path.besides", reader.text(stage.stage().name()))),
                when(stage, "p", "win"),
                Tags.p("u-mt1", reader.text(stage.stage().says())));
        needs.besides(plan, stage).forEach(words::add);
        words.add(why(stage));
        return Bits.el("li", "besides", PathStones.besides(), words);
    }

    /** A stage ahead; the next one alone tells what happens and what to get ready. */
    private HtmlContainer later(List<Planned> coming, int distance) {
        var stage = coming.get(distance);
        var words =
                Tags.div("later", Bits.el("h3", "", reader.text(stage.stage().name())), when(stage, "p", "win"));
        if (distance == 0) {
            words.add(Tags.p("u-mt1", reader.text(stage.stage().says())));
            needs.next(plan, stage).forEach(words::add);
        }
        words.add(why(stage));
        var number = day(stage).map(day -> reader.say("family.number", day.getDayOfMonth()));
        var row = Bits.el("li", distance == 0 ? "next" : "", PathStones.later(distance, number), words);
        yearThatBegins(coming, distance).ifPresent(year -> {
            row.addClassName("turn");
            row.addComponentAsFirst(year);
        });
        return row;
    }

    /** The year where it turns; the dates name it too. */
    private Optional<Component> yearThatBegins(List<Planned> coming, int at) {
        var before = at == 0 ? reader.today() : coming.get(at - 1).start();
        var year = coming.get(at).start().getYear();
        if (year == before.getYear()) {
            return Optional.empty();
        }
        var mark = Tags.span("hw-year", String.valueOf(year));
        mark.getElement().setAttribute("aria-hidden", "true");
        return Optional.of(mark);
    }

    private Component why(Planned stage) {
        var why = Tags.p("hw-why", "");
        why.add(Bits.el("b", "", reader.say("family.why.then") + " "), Tags.span("", needs.why(plan, stage)));
        return why;
    }
}
