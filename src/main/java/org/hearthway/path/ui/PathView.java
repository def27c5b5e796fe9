package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.Plans.Preview;
import org.hearthway.path.SignTexts;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.internal.GapWords;
import org.hearthway.words.Words;

/** A child's paths in the folder: on one time line, every date with its rule, and what a decision would move. */
@Route("staff/child/:child/path")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PathView extends Div implements BeforeEnterObserver, HasDynamicTitle, DecisionForms.Page {

    private static final String STAGE = "stage";
    private static final String PATH = "path";
    private static final String ZOOM = "zoom";
    private static final String COMPARE = "compare";

    /** On a phone the line is wider than the screen: today comes into its middle. */
    private static final String TO_TODAY = """
            requestAnimationFrame(() => {
                const today = this.querySelector('.today')?.getBoundingClientRect();
                if (today) this.scrollLeft += today.left - this.getBoundingClientRect().left - this.clientWidth / 2;
            });
            """;

    private final transient Plans plans;
    private final transient PathDevices devices;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient Words words;
    private final transient StageWords say;
    private final transient Viewer.Person viewer;
    private final transient StageDetail.Names names;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final Div behind = new Div();
    private final Div head = new Div();
    private final Div line = new Div();
    private final Div tables = new Div();
    private final Div beside = new Div();
    private final Div below = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private transient List<ChildPlan> onPaths = List.of();
    private transient Optional<String> chosenPath = Optional.empty();
    private transient Optional<String> chosen = Optional.empty();
    private Zoom zoom = Zoom.ALL;
    private boolean comparing;
    private long seen;

    PathView(
            Plans plans,
            PathDevices devices,
            Accounts accounts,
            Gate gate,
            Words words,
            GapWords gaps,
            SignedIn signedIn,
            VisitKindNames visitKinds,
            SignTexts signs,
            ClinicSettings settings,
            Clock clock) {
        this.plans = plans;
        this.devices = devices;
        this.accounts = accounts;
        this.gate = gate;
        this.words = words;
        this.viewer = signedIn.require();
        this.say = new StageWords(words, gaps, viewer.language());
        this.names = new StageDetail.Names(visitKinds, signs);
        this.settings = settings;
        this.clock = clock;
        addClassName("hw-worksheet");
        beside.addClassName("hw-beside");
        line.addClassName("hw-scroll");
        line.getElement().setAttribute("role", "region").setAttribute("tabindex", "0");
        line.getElement().setAttribute("aria-label", say.say("path.line"));
        var keys = new KeyBar()
                .tell(say.say("path.keys.move"), "J", "K")
                .tell(say.say("path.keys.choose"), say.say("parts.key.enter"))
                .tell(say.say("path.keys.leave"), say.say("parts.key.escape"))
                .remark(say.say("path.keys.written-down"));
        add(
                Tags.div(
                        "hw-desk",
                        behind,
                        head,
                        line,
                        Tags.div("hw-cols u-side24", Tags.div("", tables, below), beside)),
                keys);
    }

    @Override
    public String getPageTitle() {
        return say.say("path.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        var asked = event.getLocation().getQueryParameters();
        chosenPath = asked.getSingleParameter(PATH);
        chosen = asked.getSingleParameter(STAGE);
        zoom = Zoom.of(asked.getSingleParameter(ZOOM));
        comparing = asked.getSingleParameter(COMPARE).isPresent();
        draw();
    }

    private void draw() {
        head.removeAll();
        line.removeAll();
        tables.removeAll();
        beside.removeAll();
        below.removeAll();
        behind.removeAll();
        behind.add(new DeviceLine(say, child).standing(devices.behind(viewer, child), today()));
        onPaths = plans.plans(viewer, child);
        seen = onPaths.stream().map(ChildPlan::version).findFirst().orElse(0L);
        if (onPaths.isEmpty()) {
            head.add(
                    Tags.div("hw-colh", Tags.h2("u-xl", say.say("path.none"))),
                    Tags.p("hw-quiet", say.say("path.none.hint")));
            if (mayChange()) {
                tables.add(forms().begin(false));
            }
        } else {
            drawPlans(List.of());
            drawBeside();
        }
        drawDecisions();
    }

    /** The path and the stage that are chosen: an address that names no path means the first that has the stage. */
    private Optional<ChildPlan> chosenPlan() {
        return onPaths.stream()
                .filter(on -> chosenPath.isEmpty()
                        || chosenPath.get().equals(on.plan().template().id()))
                .filter(on -> chosen.flatMap(on.plan()::stage).isPresent())
                .findFirst();
    }

    private Optional<Planned> chosenStage() {
        return chosenPlan().flatMap(on -> chosen.flatMap(on.plan()::stage));
    }

    private boolean mayChange() {
        return gate.allows(viewer, Action.CHANGE_PATH, child);
    }

    private void drawPlans(List<Move> moves) {
        head.removeAll();
        line.removeAll();
        tables.removeAll();
        var all = onPaths.stream().map(ChildPlan::plan).toList();
        var moving = chosenPlan().map(on -> on.plan().template().id()).orElse("");
        head.add(new LineHead(say, zoom, one -> address(chosenPath, chosen, one, comparing), compare()));
        line.add(new PathLine(words, viewer.language(), all, zoom).draw(moving, moves));
        line.getElement().executeJs(TO_TODAY);
        for (var plan : all) {
            var id = plan.template().id();
            var alone = comparing ? plans.byPathAlone(viewer, child, id) : Optional.<Plan>empty();
            var own = id.equals(moving) ? chosen : Optional.<String>empty();
            tables.add(
                    title(plan),
                    new StageTable(
                            say,
                            plan,
                            stage -> address(Optional.of(id), Optional.of(stage), zoom, comparing),
                            own,
                            id.equals(moving) ? moves : List.of(),
                            alone));
            alone.ifPresent(path -> tables.add(new Compared(say, plan, path).summary()));
            own.flatMap(plan::stage)
                    .ifPresent(stage -> tables.add(
                            why(plan, stage),
                            new StageDetail(say, names, stage, plan.today(), place -> plans.why(plan, place))));
        }
    }

    private String address(Optional<String> path, Optional<String> stage, Zoom one, boolean compare) {
        var asked = new ArrayList<String>();
        path.ifPresent(id -> asked.add(PATH + "=" + id));
        stage.ifPresent(id -> asked.add(STAGE + "=" + id));
        if (one != Zoom.ALL) {
            asked.add(ZOOM + "=" + one.inAddress());
        }
        if (compare) {
            asked.add(COMPARE + "=yes");
        }
        var page = "staff/child/" + child + "/path";
        return asked.isEmpty() ? page : page + "?" + String.join("&", asked);
    }

    private Anchor compare() {
        var link = Tags.link("hw-chip", address(chosenPath, chosen, zoom, !comparing), say.say("path.compare"));
        link.getElement()
                .setAttribute("aria-pressed", String.valueOf(comparing))
                .setAttribute("role", "button");
        return link;
    }

    private Component title(Plan plan) {
        var byHand = plan.stages().stream()
                .filter(s -> s.why().origin() != Origin.RULE)
                .count();
        return Tags.div(
                "hw-colh hw-pathhead u-mt5",
                Tags.h2("", plan.template().name().in(viewer.language())),
                Tags.span("hw-sub", say.say("path.template", plan.template().version(), byHand)),
                plan.over().map(over -> over(plan, over)).orElseGet(() -> Tags.span("", "")));
    }

    private Component over(Plan plan, Plan.Over over) {
        var day = say.date(over.day(), plan.today());
        return Tags.span(
                "hw-label ember",
                over.outcome()
                        .map(outcome -> say.say("path.over", day, outcome.name().in(viewer.language())))
                        .orElseGet(() -> say.say("path.over.by-team", day)));
    }

    private Component why(Plan plan, Planned stage) {
        var says = Tags.div("");
        says.add(
                Tags.span(
                        "hw-b",
                        stage.clash().isPresent()
                                ? say.say("path.why.no-day")
                                : say.say("path.why.title", say.date(stage.start(), plan.today()))),
                new Span(" " + plans.why(plan, stage).in(viewer.language()) + " "),
                new Span(say.allowed(stage).map(allowed -> allowed + " ").orElse("")),
                Tags.span("hw-sub", say.say("path.why.source", stage.stage().source())));
        if (mayChange()) {
            stage.clash().ifPresent(clash -> says.add(ways(plan, clash)));
        }
        return Tags.div("hw-banner river u-mt3 u-start", Icon.WHY.draw(), says);
    }

    /** What would help, each a press away from its preview. */
    private Component ways(Plan plan, Clash clash) {
        var ways = Tags.div("hw-offers u-mt2");
        for (var way : clash.ways()) {
            var title = plans.way(plan, way).in(viewer.language());
            ways.add(Tags.button("plain", title, pressed -> propose(title, change(way), say.say("path.change.save"))));
        }
        return ways;
    }

    private static Change change(Clash.Way way) {
        if (way instanceof Clash.Way.Move move) {
            return new Change.SetByHand(move.stage().id(), move.to());
        }
        var give = (Clash.Way.Give) way;
        return new Change.OwnRule(give.stage().id(), give.at(), give.rule());
    }

    private void propose(String title, Change change, String save) {
        open(new ReadyForm(say, words, title, change, save, acts(chosenPlan().orElseThrow())));
    }

    private void open(Component form) {
        beside.removeAll();
        beside.add(form);
    }

    private void drawBeside() {
        var stage = chosenStage();
        if (!mayChange()) {
            beside.add(Tags.p("hw-quiet", say.say("path.read-only")));
        } else if (stage.isPresent()) {
            var on = chosenPlan().orElseThrow();
            beside.add(new ChangeForm(say, words, on, stage.get(), acts(on)));
        } else {
            beside.add(choose());
            onPaths.stream().filter(on -> on.plan().over().isEmpty()).forEach(on -> {
                doneBefore(on.plan());
                notOnPlan(on);
            });
        }
        if (stage.isEmpty()) {
            onPaths.stream()
                    .filter(on -> on.plan().over().isEmpty())
                    .map(ChildPlan::plan)
                    .forEach(plan -> beside.add(new AdviceList(
                            say,
                            titled("path.advice.title", plan),
                            plans.advice(viewer, child, plan.template().id()),
                            today())));
        }
    }

    private Component choose() {
        var acts = Tags.div(
                "hw-offers",
                Tags.button("plain", say.say("path.begin.other"), pressed -> open(forms().begin(true))),
                Tags.button("plain", say.say("path.away"), pressed -> open(forms().away())));
        onPaths.stream()
                .map(ChildPlan::plan)
                .filter(plan -> plan.over().isEmpty())
                .forEach(plan -> {
                    var name = plan.template().name().in(viewer.language());
                    acts.add(Tags.button("plain", say.say("path.close", name), pressed -> open(forms().close(plan))));
                });
        return Tags.div(
                "hw-sheet u-edged u-onpaper",
                Tags.div("hw-colh", Tags.h2("", say.say("path.choose"))),
                Tags.p("hw-quiet u-mb3", say.say("path.choose.hint")),
                acts);
    }

    /** Stages that were done before the path began here, each a press away from its day. */
    private void doneBefore(Plan plan) {
        if (plan.before().isEmpty()) {
            return;
        }
        var list = new UnorderedList();
        list.addClassName("hw-plain");
        plan.before()
                .forEach(stage -> list.add(new ListItem(
                        new Span(stage.name().in(viewer.language()) + " "),
                        Tags.button(
                                "text",
                                say.say("path.before.day.known"),
                                pressed -> open(forms().doneBefore(plan, stage))))));
        beside.add(Tags.div(
                "u-mt5",
                Tags.h2("u-l", titled("path.before.title", plan)),
                Tags.p("hw-s hw-quiet", say.say("path.before.hint")),
                list));
    }

    /** Stages that come on the plan only if needed, and those that were taken from it. */
    private void notOnPlan(ChildPlan on) {
        var plan = on.plan();
        var list = new UnorderedList();
        list.addClassName("hw-plain");
        plan.template().stages().stream()
                .filter(stage ->
                        plan.stage(stage.id()).isEmpty() && !plan.before().contains(stage))
                .forEach(stage -> list.add(new ListItem(
                        new Span(stage.name().in(viewer.language()) + " "),
                        Tags.button(
                                "text",
                                say.say("path.add"),
                                pressed -> open(new ReadyForm(
                                        say,
                                        words,
                                        stage.name().in(viewer.language()),
                                        new Change.Add(stage.id()),
                                        say.say("path.add.save"),
                                        acts(on)))))));
        if (list.getChildren().findAny().isPresent()) {
            beside.add(Tags.div("u-mt5", Tags.h2("u-l", titled("path.not-on-plan", plan)), list));
        }
    }

    /** A title, with the path's name where the child is on several. */
    private String titled(String key, Plan plan) {
        var several = onPaths.stream().filter(on -> on.plan().over().isEmpty()).count() > 1;
        var title = say.say(key);
        return several ? say.say("path.of", title, plan.template().name()) : title;
    }

    private DecisionForms forms() {
        return new DecisionForms(say, words, plans, devices, viewer, child, today(), this);
    }

    @Override
    public long seen() {
        return seen;
    }

    @Override
    public void done(String says) {
        Told.done(say.say(says));
        TallyChanged.tell();
        leave();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private void drawDecisions() {
        below.removeAll();
        var decisions = plans.decisions(viewer, child);
        if (decisions.isEmpty()) {
            return;
        }
        var people = decisions.stream().flatMap(d -> d.by().stream()).collect(Collectors.toSet());
        below.add(new DecisionList(
                say,
                decisions,
                accounts.byId(viewer, people),
                settings.zone(),
                today(),
                mayChange() ? Optional.of(decision -> open(forms().takeBack(decision))) : Optional.empty()));
    }

    /** What forms about a stage of one path ask for. */
    private ChangeForm.Acts acts(ChildPlan on) {
        var path = on.plan().template().id();
        return new ChangeForm.Acts() {
            @Override
            public Preview preview(Change change) {
                onPaths = plans.plans(viewer, child);
                try {
                    var preview = plans.preview(viewer, child, path, change);
                    seen = preview.version();
                    drawPlans(preview.effect().moves());
                    return preview;
                } catch (Invalid refused) {
                    drawPlans(List.of());
                    throw refused;
                }
            }

            @Override
            public Optional<Component> after(Change change) {
                return devices.ifSaid(viewer, child, path, change).map(new DeviceLine(say, child)::preview);
            }

            @Override
            public void save(Change change, String reason) {
                try {
                    plans.apply(viewer, child, path, change, reason, seen);
                    done("path.change.done");
                } catch (Overtaken overtaken) {
                    // what was typed stays; the plan under it is drawn afresh, with what would move now
                    Told.couldNot(say.say("path.change.overtaken"));
                    beside.getChildren()
                            .filter(ChangeForm.class::isInstance)
                            .map(ChangeForm.class::cast)
                            .forEach(ChangeForm::show);
                    drawDecisions();
                }
            }

            @Override
            public void leave() {
                PathView.this.leave();
            }
        };
    }

    @Override
    public void leave() {
        if (chosen.isEmpty()) {
            draw();
        } else {
            UI.getCurrent().navigate(address(Optional.empty(), Optional.empty(), zoom, comparing));
        }
    }
}
