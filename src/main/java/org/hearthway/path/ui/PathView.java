package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
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
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
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
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.internal.GapWords;
import org.hearthway.words.Words;

/** A child's paths in the folder: on one time line, every date with its rule, and what a decision would move. */
@Route("staff/child/:child/path")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PathView extends Div implements BeforeEnterObserver, HasDynamicTitle, DecisionForms.Page, PathChoices.Page {

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
    private transient PathAddress shown = PathAddress.of(child, QueryParameters.empty());
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
        shown = PathAddress.of(child, event.getLocation().getQueryParameters());
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
                .filter(on -> shown.path()
                        .filter(path -> !path.equals(on.plan().template().id()))
                        .isEmpty())
                .filter(on -> shown.stage().flatMap(on.plan()::stage).isPresent())
                .findFirst();
    }

    private Optional<Planned> chosenStage() {
        return chosenPlan().flatMap(on -> shown.stage().flatMap(on.plan()::stage));
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
        head.add(new LineHead(say, shown.zoom(), one -> shown.nearer(one).link(), compare()));
        line.add(new PathLine(words, viewer.language(), all, shown.zoom()).draw(moving, moves));
        line.getElement().executeJs(TO_TODAY);
        for (var plan : all) {
            var id = plan.template().id();
            var alone = shown.comparing() ? plans.byPathAlone(viewer, child, id) : Optional.<Plan>empty();
            var own = id.equals(moving) ? shown.stage() : Optional.<String>empty();
            tables.add(
                    new PathTitle(say, plan),
                    new StageTable(
                            say,
                            plan,
                            stage -> shown.at(id, stage).link(),
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

    private Anchor compare() {
        var link = Tags.link("hw-chip", shown.comparing(!shown.comparing()).link(), say.say("path.compare"));
        link.getElement()
                .setAttribute("aria-pressed", String.valueOf(shown.comparing()))
                .setAttribute("role", "button");
        return link;
    }

    private Component why(Plan plan, Planned stage) {
        return mayChange()
                ? new WhyThisDay(say, plans, plan, stage, this::propose)
                : new WhyThisDay(say, plans, plan, stage);
    }

    private void propose(String title, Change change) {
        var on = chosenPlan().orElseThrow();
        open(new ReadyForm(say, words, title, change, say.say("path.change.save"), acts(on)));
    }

    @Override
    public void open(Component form) {
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
            beside.add(new PathChoices(say, words, goingOn(), forms(), this));
        }
        if (stage.isEmpty()) {
            goingOn().stream()
                    .map(ChildPlan::plan)
                    .forEach(plan -> beside.add(new AdviceList(
                            say,
                            PathChoices.titled(say, "path.advice.title", plan, goingOn()),
                            plans.advice(viewer, child, plan.template().id()),
                            today())));
        }
    }

    private List<ChildPlan> goingOn() {
        return onPaths.stream().filter(on -> on.plan().over().isEmpty()).toList();
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

    @Override
    public ChangeForm.Acts acts(ChildPlan on) {
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
        if (shown.stage().isEmpty()) {
            draw();
        } else {
            UI.getCurrent().navigate(shown.withoutStage().link());
        }
    }
}
