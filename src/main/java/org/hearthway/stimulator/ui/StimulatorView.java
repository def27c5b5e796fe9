package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.Window;
import org.hearthway.words.Words;

/** A child's stimulator in the folder: battery and window with the arithmetic, settings, forms, every reading. */
@Route("staff/child/:child/stimulator")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class StimulatorView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    /** The kind of visit at which settings are looked at. */
    private static final String SETTINGS_VISIT = "programming";

    private static final int VISITS_SHOWN = 3;

    private final transient Stimulators stimulators;
    private final transient Plans plans;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient StimulatorWords say;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient Viewer.Person viewer;
    private final Div state = new Div();
    private final Div beside = Tags.div("hw-stack hw-screen-only");
    /** Whether this person has asked to see the figures that wait, and so confirms none of them. */
    private boolean unveiled;

    private transient ChildId child = new ChildId(new UUID(0, 0));
    private transient Stimulators.OnRecord known = new Stimulators.OnRecord(List.of(), List.of(), 0);

    StimulatorView(
            Stimulators stimulators,
            Plans plans,
            Accounts accounts,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock,
            SignedIn signedIn) {
        this.stimulators = stimulators;
        this.plans = plans;
        this.accounts = accounts;
        this.gate = gate;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.say = new StimulatorWords(words, viewer.language());
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", state, beside)),
                new KeyBar().remark(say.say("stimulator.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say.say("stimulator.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        unveiled = false;
        drawState();
        drawForms();
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), clinic.zone());
    }

    private LocalDate today() {
        return now().toLocalDate();
    }

    private boolean may() {
        return gate.allows(viewer, Action.RECORD_STIMULATOR, child);
    }

    private void drawState() {
        known = stimulators.record(viewer, child);
        state.removeAll();
        if (known.generators().isEmpty()) {
            state.add(
                    Tags.div("hw-colh", Tags.h2("", say.say("stimulator.none"))),
                    Tags.p("hw-quiet", say.say("stimulator.none.hint")),
                    Tags.div(
                            "u-row hw-screen-only",
                            Tags.link(
                                    "hw-button plain",
                                    "staff/child/" + child + "/device",
                                    say.say("stimulator.none.devices"))));
        }
        known.generators()
                .forEach(generator ->
                        state.add(new GeneratorSheet(say, generator, veiled(), stimulators.rules(), today())));
        var visits = visits();
        if (!visits.isEmpty()) {
            state.add(Tags.section(
                    "",
                    say.say("stimulator.visits"),
                    Tags.h2("u-xl", say.say("stimulator.visits")),
                    Tags.p("", String.join(" · ", visits)),
                    Tags.p("hw-sub", say.say("stimulator.visits.why"))));
        }
        var revisions = stimulators.revisions(viewer, child);
        if (!revisions.isEmpty()) {
            state.add(new ReadingTable(
                    say, revisions, veiled(), this::name, may(), reading -> open(form(Optional.of(reading)))));
        }
    }

    /** The next settings visits that the path asks for. */
    private List<String> visits() {
        return plans.plans(viewer, child).stream()
                .flatMap(plan -> plan.plan().stages().stream())
                .flatMap(stage -> stage.visits().stream())
                .filter(visit ->
                        visit.kind().equals(SETTINGS_VISIT) && !visit.until().isBefore(today()))
                .sorted(Comparator.comparing(Plan.VisitWindow::from))
                .limit(VISITS_SHOWN)
                .map(visit -> say.say("stimulator.visits.between", say.date(visit.from()), say.date(visit.until())))
                .toList();
    }

    private String name(AccountId account) {
        return Optional.ofNullable(accounts.byId(viewer, Set.of(account)).get(account))
                .map(Account::name)
                .orElse("");
    }

    private void drawForms() {
        beside.removeAll();
        if (!may()) {
            beside.add(Tags.p("hw-quiet", say.say("stimulator.read-only")));
            return;
        }
        waiting().forEach(reading -> beside.add(second(reading)));
        if (!veiled().isEmpty()) {
            var show = Tags.button("text", say.say("stimulator.unveil"), pressed -> {
                unveiled = true;
                drawState();
                drawForms();
            });
            show.setId("reading-unveil");
            beside.add(show);
        }
        if (known.generators().isEmpty()) {
            var urgent =
                    Tags.button("text", say.say("stimulator.none.emergency"), pressed -> open(form(Optional.empty())));
            urgent.setId("reading-emergency-open");
            beside.add(urgent);
            return;
        }
        beside.add(form(Optional.empty()));
        known.generators()
                .forEach(generator -> beside.add(new KindForm(
                        say,
                        generator,
                        about -> settle(
                                () -> stimulators.describe(viewer, child, generator.serial(), about),
                                "stimulator.kind.saved"))));
    }

    private Component second(Reading reading) {
        var when = say.moment(reading.data().taken());
        if (reading.by().equals(viewer.account())) {
            return Tags.p("hw-quiet", say.say("stimulator.check.own", when));
        }
        if (unveiled) {
            return Tags.p("hw-quiet", say.say("stimulator.check.seen", when));
        }
        return new CheckForm(
                say,
                reading,
                name(reading.by()),
                again -> settle(
                        () -> stimulators.confirm(viewer, child, again, reading.revision()), "stimulator.check.done"));
    }

    /**
     * Readings whose figures this person does not see, to read the device without them: those of others that wait. In an
     * emergency nothing is kept back.
     */
    private List<Reading> veiled() {
        return unveiled || !may()
                ? List.of()
                : waiting().stream()
                        .filter(reading -> !reading.by().equals(viewer.account())
                                && !reading.data().emergency())
                        .toList();
    }

    /** Readings that wait for their second check, the one taken last first. */
    private List<Reading> waiting() {
        return Stream.concat(
                        known.generators().stream().flatMap(generator -> generator.readings().stream()),
                        known.elsewhere().stream())
                .filter(reading -> reading.check().isEmpty())
                .toList();
    }

    private Component form(Optional<Reading> correcting) {
        var serials = Stream.concat(
                        known.generators().stream().map(Generator::serial),
                        correcting.stream().map(reading -> reading.data().generator()))
                .distinct()
                .collect(Collectors.toList());
        var charged = known.generators().stream()
                .anyMatch(generator -> generator.about().charge() != Charge.NEVER);
        var usual = known.generators().stream()
                .findFirst()
                .map(GeneratorSheet::unit)
                .orElse(BatteryUnit.PERCENT);
        return new ReadingForm(
                say,
                serials,
                charged,
                usual,
                now().truncatedTo(ChronoUnit.MINUTES),
                correcting,
                new ReadingForm.Acts() {
                    @Override
                    public Window check(ReadingData data) {
                        return stimulators.check(
                                viewer,
                                child,
                                data,
                                correcting.map(Reading::number).orElse(0L));
                    }

                    @Override
                    public void save(ReadingData data, String reason) {
                        settle(
                                () -> correcting.ifPresentOrElse(
                                        reading -> stimulators.correct(
                                                viewer,
                                                child,
                                                reading.number(),
                                                Optional.of(data),
                                                reason,
                                                known.seen()),
                                        () -> stimulators.enter(viewer, child, data, known.seen())),
                                "stimulator.saved");
                    }

                    @Override
                    public void takeBack(String reason) {
                        correcting.ifPresent(reading -> settle(
                                () -> stimulators.correct(
                                        viewer, child, reading.number(), Optional.empty(), reason, known.seen()),
                                "stimulator.taken-back"));
                    }

                    @Override
                    public void leave() {
                        drawForms();
                    }
                });
    }

    /** Beside the readings, or below them on a phone: then the form is brought into sight. */
    private void open(Component form) {
        beside.removeAll();
        beside.add(form);
        form.scrollIntoView();
    }

    private void settle(Runnable act, String told) {
        try {
            act.run();
            Told.done(say.say(told));
            drawState();
            drawForms();
        } catch (Overtaken overtaken) {
            // the form keeps what was typed; what came in between is drawn beside it
            Told.couldNot(say.say("stimulator.overtaken"));
            drawState();
        }
    }
}
