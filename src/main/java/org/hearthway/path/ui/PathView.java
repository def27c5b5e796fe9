package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;
import org.hearthway.parts.TallyChanged;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.Plans.Decision;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.Plans.Preview;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.internal.GapWords;
import org.hearthway.words.Words;

/** A child's path in the folder: the way on a time line, every date with its rule, and what a change would move. */
@Route("staff/child/:child/path")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PathView extends Div implements BeforeEnterObserver, HasDynamicTitle, ChangeForm.Acts {

    private static final String STAGE = "stage";

    private final transient Plans plans;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient Words words;
    private final transient StageWords say;
    private final transient Viewer.Person viewer;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final Div head = new Div();
    /** On a phone the line is wider than the screen: today comes into its middle. */
    private static final String TO_TODAY = """
            requestAnimationFrame(() => {
                const today = this.querySelector('.today')?.getBoundingClientRect();
                if (today) this.scrollLeft += today.left - this.getBoundingClientRect().left - this.clientWidth / 2;
            });
            """;

    private final Div line = new Div();
    private final Div table = new Div();
    private final Div beside = new Div();
    private final Div below = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private transient Optional<String> chosen = Optional.empty();
    private long seen;

    PathView(
            Plans plans,
            Accounts accounts,
            Gate gate,
            Words words,
            GapWords gaps,
            SignedIn signedIn,
            ClinicSettings settings,
            Clock clock) {
        this.plans = plans;
        this.accounts = accounts;
        this.gate = gate;
        this.words = words;
        this.viewer = signedIn.require();
        this.say = new StageWords(words, gaps, viewer.language());
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
        add(Tags.div("hw-desk", head, line, Tags.div("hw-cols u-side24", Tags.div("", table, below), beside)), keys);
    }

    @Override
    public String getPageTitle() {
        return say.say("path.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        chosen = event.getLocation().getQueryParameters().getSingleParameter(STAGE);
        draw();
    }

    private void draw() {
        head.removeAll();
        line.removeAll();
        table.removeAll();
        beside.removeAll();
        below.removeAll();
        var plan = plans.plan(viewer, child);
        seen = plan.map(ChildPlan::version).orElse(0L);
        if (plan.isEmpty()) {
            head.add(
                    Tags.div("hw-colh", Tags.h2("u-xl", say.say("path.none"))),
                    Tags.p("hw-quiet", say.say("path.none.hint")));
            if (mayChange()) {
                table.add(beginForm());
            }
            return;
        }
        drawPlan(plan.get().plan(), List.of());
        drawBeside(plan.get().plan());
        drawDecisions(plan.get().plan().today());
    }

    private boolean mayChange() {
        return gate.allows(viewer, Action.CHANGE_PATH, child);
    }

    private void drawPlan(Plan plan, List<Move> moves) {
        head.removeAll();
        line.removeAll();
        table.removeAll();
        head.add(title(plan));
        line.add(new PathLine(words, viewer.language()).draw(plan, moves));
        line.getElement().executeJs(TO_TODAY);
        table.add(new StageTable(say, plan, this::address, chosen, moves));
        chosen.flatMap(plan::stage).ifPresent(stage -> table.add(why(plan, stage)));
    }

    private String address(String stage) {
        return "staff/child/" + child + "/path?" + STAGE + "=" + stage;
    }

    private Component title(Plan plan) {
        var byHand = plan.stages().stream()
                .filter(s -> s.why().origin() != Origin.RULE)
                .count();
        return Tags.div(
                "hw-colh hw-pathhead",
                Tags.h2("", plan.template().name().in(viewer.language())),
                Tags.span("hw-sub", say.say("path.template", plan.template().version(), byHand)),
                plan.over()
                        .map(over -> Tags.span(
                                "hw-label ember",
                                say.say(
                                        "path.over",
                                        say.date(over.day(), plan.today()),
                                        over.outcome().name().in(viewer.language()))))
                        .orElseGet(() -> Tags.span("", "")),
                Tags.span("grow", ""),
                key("st-done", "path.key.behind"),
                key("st-now", "path.key.now"),
                key("st-later", "path.key.later"));
    }

    private Component key(String stone, String says) {
        var picture = new SvgText("", 0, 0, 18, 16)
                .decorative()
                .shape("path", "class", stone, "d", Stone.outline(9, 8, 7.2, 5.9, 2));
        return Tags.span("hw-cell", new Drawing(picture), new Span(say.say(says)));
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
                new Span(
                        say.allowed(stage.stage()).map(allowed -> allowed + " ").orElse("")),
                Tags.span("hw-sub", say.say("path.why.source", stage.stage().source())));
        return Tags.div("hw-banner river u-mt3 u-start", Icon.WHY.draw(), says);
    }

    private void drawBeside(Plan plan) {
        var stage = chosen.flatMap(plan::stage);
        if (!mayChange()) {
            beside.add(Tags.p("hw-quiet", say.say("path.read-only")));
        } else if (stage.isPresent()) {
            beside.add(new ChangeForm(say, words, stage.get(), this));
        } else {
            beside.add(Tags.div(
                    "hw-sheet u-edged u-onpaper",
                    Tags.div("hw-colh", Tags.h2("", say.say("path.choose"))),
                    Tags.p("hw-quiet u-mb3", say.say("path.choose.hint")),
                    Tags.button("plain", say.say("path.begin.other"), pressed -> {
                        beside.removeAll();
                        beside.add(beginForm());
                    })));
        }
        if (stage.isEmpty()
                && mayChange()
                && plan.over().isEmpty()
                && plan.template().stages().stream()
                        .anyMatch(s -> plan.stage(s.id()).isEmpty())) {
            beside.add(notOnPlan(plan));
        }
        if (stage.isEmpty()) {
            beside.add(new AdviceList(say, plans.advice(viewer, child), plan.today()));
        }
    }

    private void takeBack(Decision decision) {
        beside.removeAll();
        var effect = plans.effectOfUndo(viewer, child, decision.version());
        beside.add(new TakeBackForm(say, words, decision, effect, today(), new TakeBackForm.Acts() {
            @Override
            public void takeBack(String reason) {
                try {
                    plans.undo(viewer, child, decision.version(), reason, seen);
                    Told.done(say.say("path.change.done"));
                    TallyChanged.tell();
                    leave();
                } catch (Overtaken overtaken) {
                    Told.couldNot(say.say("path.change.overtaken"));
                }
            }

            @Override
            public void leave() {
                PathView.this.leave();
            }
        }));
    }

    /** Stages that come on the plan only if needed, and those that were taken from it. */
    private Component notOnPlan(Plan plan) {
        var list = new UnorderedList();
        list.addClassName("hw-plain");
        plan.template().stages().stream()
                .filter(stage -> plan.stage(stage.id()).isEmpty())
                .forEach(stage -> list.add(new ListItem(
                        new Span(stage.name().in(viewer.language()) + " "),
                        Tags.button("text", say.say("path.add"), pressed -> {
                            beside.removeAll();
                            beside.add(new AddForm(say, words, stage, this));
                        }))));
        return Tags.div("u-mt5", Tags.h2("u-l", say.say("path.not-on-plan")), list);
    }

    private Component beginForm() {
        return new BeginForm(say, words, plans.pathways(), today(), new BeginForm.Acts() {
            @Override
            public List<Remark> advice(String path, LocalDate day) {
                return plans.adviceIfBegun(viewer, child, path, day);
            }

            @Override
            public void begin(String path, LocalDate day, String reason) {
                plans.begin(viewer, child, path, day, reason);
                Told.done(say.say("path.begin.done"));
                TallyChanged.tell();
                leave();
            }
        });
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private void drawDecisions(LocalDate today) {
        var decisions = plans.decisions(viewer, child);
        var people = decisions.stream().flatMap(d -> d.by().stream()).collect(Collectors.toSet());
        below.add(new DecisionList(
                say,
                decisions,
                accounts.byId(viewer, people),
                settings.zone(),
                today,
                mayChange() ? Optional.of(this::takeBack) : Optional.empty()));
    }

    @Override
    public Preview preview(Change change) {
        var preview = plans.preview(viewer, child, change);
        seen = preview.version();
        drawPlan(preview.before(), preview.effect().moves());
        return preview;
    }

    @Override
    public void save(Change change, String reason) {
        try {
            plans.apply(viewer, child, change, reason, seen);
            Told.done(say.say("path.change.done"));
            TallyChanged.tell();
            leave();
        } catch (Overtaken overtaken) {
            // what was typed stays; the plan under it is drawn afresh, with what would move now
            Told.couldNot(say.say("path.change.overtaken"));
            beside.getChildren()
                    .filter(ChangeForm.class::isInstance)
                    .map(ChangeForm.class::cast)
                    .forEach(ChangeForm::show);
            below.removeAll();
            plans.plan(viewer, child).ifPresent(p -> drawDecisions(p.plan().today()));
        }
    }

    @Override
    public void leave() {
        if (chosen.isEmpty()) {
            draw();
        } else {
            UI.getCurrent().navigate("staff/child/" + child + "/path", QueryParameters.empty());
        }
    }
}
