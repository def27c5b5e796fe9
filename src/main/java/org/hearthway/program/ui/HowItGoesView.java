package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.Progress;
import org.hearthway.program.Progress.Going;
import org.hearthway.program.Progress.Proposed;
import org.hearthway.program.Progress.Weeks;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.trend.RunChart;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.hearthway.words.Words;

/** How a child's home program goes: what was done week by week, pain and effort over the days, reasons, and what is proposed. */
@Route("staff/child/:child/program/how")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class HowItGoesView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private static final String WEEKS = "weeks";
    private static final String OF = "of";

    private final transient Progress progress;
    private final transient HomeWeek week;
    private final transient ClinicSettings settings;
    private final transient Gate gate;
    private final transient SignedIn signedIn;
    private final transient HowSay say;
    private final transient HowTables tables;
    private final Div page = Tags.div("hw-desk hw-going");
    private transient ChildId child = new ChildId(new UUID(0, 0));

    HowItGoesView(
            Progress progress,
            HomeWeek week,
            Gate gate,
            ClinicSettings settings,
            SignedIn signedIn,
            Words words,
            ProgramWords programWords) {
        this.progress = progress;
        this.week = week;
        this.settings = settings;
        this.gate = gate;
        this.signedIn = signedIn;
        this.say = new HowSay(words, programWords, signedIn.require().language());
        this.tables = new HowTables(say);
        addClassName("hw-worksheet");
        add(page, new KeyBar().remark(say.say("source")));
    }

    private Viewer.Person viewer() {
        return signedIn.require();
    }

    @Override
    public String getPageTitle() {
        return say.say("title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer(), Action.SEE_FOLDER, child);
        var asked = event.getLocation().getQueryParameters();
        var weeks = Progress.SPANS.stream()
                .filter(span -> asked.getSingleParameter(WEEKS)
                        .filter(String.valueOf(span)::equals)
                        .isPresent())
                .findFirst()
                .orElse(Progress.SPANS.get(0));
        draw(weeks, asked.getSingleParameter(OF).orElse(""));
    }

    private String address(int weeks, String of) {
        return "staff/child/" + child + "/program/how?" + WEEKS + "=" + weeks
                + (of.isEmpty() ? "" : "&" + OF + "=" + of);
    }

    private void draw(int weeks, String asked) {
        var told = progress.weeks(viewer(), child, weeks);
        var one = told.exercises().stream()
                .filter(exercise -> exercise.exercise().equals(asked))
                .findFirst();
        var of = one.map(Progress.OfExercise::exercise).orElse("");
        var going = one.map(Progress.OfExercise::going).orElse(told.all());
        page.removeAll();
        page.add(head(weeks, of));
        progress.proposed(viewer(), child).forEach(proposed -> page.add(proposal(proposed)));
        LateTicks.of(say, settings.zone(), week.entries(viewer(), child, told.from(), told.until()))
                .ifPresent(page::add);
        page.add(done(going, of));
        page.add(rated("pain", going.pain(), told));
        page.add(rated("effort", going.effort(), told));
        page.add(reasons(going));
        page.add(byExercise(told, weeks, of));
    }

    private Component head(int weeks, String of) {
        var spans = Tags.div("hw-filters hw-screen-only");
        spans.getElement().setAttribute("role", "group").setAttribute("aria-label", say.say("spans"));
        Progress.SPANS.forEach(span -> {
            var chip = Tags.link("hw-chip", address(span, of), say.say("span", span));
            chip.getElement()
                    .setAttribute("role", "button")
                    .setAttribute("aria-pressed", String.valueOf(span == weeks));
            spans.add(chip);
        });
        var what = of.isEmpty() ? say.say("all") : say.name(of);
        var title = Tags.div(
                "hw-title",
                Tags.h2("", say.say("title")),
                Tags.span("hw-quiet", say.say("over", what, weeks)),
                Tags.span("grow", ""),
                spans);
        if (!of.isEmpty()) {
            title.add(Tags.link("hw-button text u-short hw-screen-only", address(weeks, ""), say.say("all")));
        }
        title.add(
                Tags.link(
                        "hw-button text u-short hw-screen-only",
                        "staff/child/" + child + "/program",
                        say.say("program")),
                print());
        return title;
    }

    private Component print() {
        var print = Tags.button(
                "text u-short hw-screen-only",
                say.say("print"),
                pressed -> UI.getCurrent().getPage().executeJs("window.print()"));
        print.setId("print-how");
        return print;
    }

    private Component proposal(Proposed proposed) {
        return gate.allows(viewer(), Action.CHANGE_PROGRAM, child)
                ? new ProposalStrip(say, proposed, () -> take(proposed))
                : new ProposalStrip(say, proposed);
    }

    private void take(Proposed proposed) {
        progress.takeUp(viewer(), child, proposed);
        UI.getCurrent().navigate("staff/child/" + child + "/program");
    }

    private Component done(Going going, String of) {
        var label = say.say("done.title");
        var picture = new DoneBars(say, going.weeks(), doneWords(going.whole())).draw();
        var section = Tags.section("hw-sheet hw-plot", label, Tags.h2("", label));
        section.add(
                Tags.p("", doneWords(going.whole())),
                picture,
                legend(),
                tables.folded(label, tables.weeks(label, going.weeks())));
        if (of.isEmpty()) {
            section.add(Tags.p("hw-quiet hw-s", say.say("done.formula")));
        }
        return section;
    }

    private String doneWords(Adherence whole) {
        if (whole.planned() == 0) {
            return say.say("done.none", whole.extra());
        }
        return say.say(
                "done.words",
                whole.done(),
                whole.planned(),
                say.percent(whole.percent()),
                whole.some(),
                whole.excused(),
                whole.notDone(),
                whole.notReported(),
                whole.extra());
    }

    private Component legend() {
        var legend = Tags.div("hw-legend");
        for (var part : DoneBars.Part.values()) {
            var sample = new SvgText("hw-sample", 0, 0, 22, 14).decorative();
            DoneBars.block(sample, part, 1, 1, 20, 12);
            legend.add(Tags.span("", new Drawing(sample), Tags.span("", say.one("part", part.name()))));
        }
        var extra = new SvgText("hw-sample", 0, 0, 22, 14).decorative();
        DoneBars.extra(extra, 11, 7);
        legend.add(Tags.span("", new Drawing(extra), Tags.span("", say.say("part.extra"))));
        return legend;
    }

    /** A plot for each who rated: numbers of a child and of a grown-up are never joined. */
    private Component rated(String what, Map<Rater, RunChart> charts, Weeks told) {
        var label = say.one(what, "title");
        var section = Tags.section("hw-sheet hw-plot", label, Tags.h2("", label));
        var any = Stream.of(Rater.values())
                .flatMap(rater -> Optional.ofNullable(charts.get(rater)).stream()
                        .filter(chart -> !chart.points().isEmpty())
                        .map(chart -> plot(what, rater, chart, told)))
                .toList();
        any.forEach(section::add);
        if (any.isEmpty()) {
            section.add(Tags.p("hw-quiet", say.one(what, "none")));
        }
        return section;
    }

    private Component plot(String what, Rater rater, RunChart chart, Weeks told) {
        var who = say.one("rated", rater.name());
        var says = say.one("change", chart.change().name());
        var label = say.one(what, "title") + ", " + who;
        var picture = new RatingChart(say, chart, told.from(), told.until(), label + ". " + says).draw();
        return Tags.div(
                "hw-rated",
                Tags.p("hw-b", who),
                Tags.p(chart.isSignal() ? "hw-signal" : "", says),
                Tags.p("hw-s hw-quiet", rule(chart)),
                picture,
                Tags.p("hw-s hw-quiet", say.say("chart.key")),
                tables.folded(label, tables.points(label, chart)));
    }

    private String rule(RunChart chart) {
        if (chart.change() == RunChart.Change.TOO_FEW) {
            return say.say("rule.few", chart.useful(), RunChart.ENOUGH);
        }
        return chart.isOneSided()
                ? say.say("rule.share", chart.median(), chart.useful(), chart.offInLaterHalf())
                : say.say(
                        "rule",
                        chart.longestRun(),
                        chart.longestUsual(),
                        chart.crossings(),
                        chart.fewestUsual(),
                        chart.useful());
    }

    private Component reasons(Going going) {
        var label = say.say("reasons.title");
        var section = Tags.section("hw-sheet hw-plot", label, Tags.h2("", label));
        if (going.reasons().isEmpty()) {
            section.add(Tags.p("hw-quiet", say.say("reasons.none")));
            return section;
        }
        var table = tables.table(label, "reason", "times");
        going.reasons()
                .forEach(given ->
                        tables.row(table, List.of(say.one("reason", given.reason()), String.valueOf(given.times()))));
        section.add(table);
        return section;
    }

    private Component byExercise(Weeks told, int weeks, String of) {
        var label = say.say("exercises.title");
        var section = Tags.section("hw-sheet hw-plot wide", label, Tags.h2("", label));
        var table = tables.table(
                label,
                "exercise",
                "done",
                "some",
                "excused",
                "not-done",
                "silent",
                "extra",
                "percent",
                "pain",
                "why-not");
        told.exercises().forEach(one -> {
            var link = Tags.link("", address(weeks, one.exercise()), say.name(one.exercise()));
            if (one.exercise().equals(of)) {
                link.getElement().setAttribute("aria-current", "true");
            }
            tables.row(
                    table,
                    link,
                    Stream.concat(
                                    tables.numbers(one.going().whole()).stream(),
                                    Stream.of(pain(one.going()), whyNot(one.going())))
                            .toList());
        });
        section.add(table);
        return section;
    }

    /** Lowest and highest, of each who rated. */
    private String pain(Going going) {
        return String.join(
                " · ",
                Stream.of(Rater.values())
                        .flatMap(rater -> Optional.ofNullable(going.pain().get(rater)).stream()
                                .filter(chart -> !chart.points().isEmpty())
                                .map(chart -> say.one("pain.span", rater.name(), least(chart), most(chart))))
                        .toList());
    }

    private static int least(RunChart chart) {
        return chart.points().stream().mapToInt(RunChart.Point::number).min().orElse(0);
    }

    private static int most(RunChart chart) {
        return chart.points().stream().mapToInt(RunChart.Point::number).max().orElse(0);
    }

    private String whyNot(Going going) {
        return String.join(
                ", ",
                going.reasons().stream()
                        .map(given -> say.say("reason.times", say.one("reason", given.reason()), given.times()))
                        .toList());
    }
}
