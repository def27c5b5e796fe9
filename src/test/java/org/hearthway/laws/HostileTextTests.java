package org.hearthway.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.clinic.ClosedDays;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpEntry;
import org.hearthway.reminder.Outbox;
import org.hearthway.sign.Signs;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Readings;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.engine.Watched;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;
import org.hearthway.testing.Children;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.Team;
import org.hearthway.testing.WebTest;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/**
 * IO3, IO4: whatever a person types anywhere comes back letter for letter, or is refused with the field, the bound and
 * the way out; stands as text on every page that shows it; and is in no line of the trail and no mail.
 */
@WebTest
@Import(SignInRequests.class)
class HostileTextTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDateTime VISIT = LocalDateTime.of(2026, 3, 24, 10, 30);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc web;

    @Autowired
    private SignInRequests people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Visits visits;

    @Autowired
    private Signs signs;

    @Autowired
    private Needs needs;

    @Autowired
    private Tasks tasks;

    @Autowired
    private ClosedDays closed;

    @Autowired
    private Outbox outbox;

    @Autowired
    private Programs programs;

    @Autowired
    private HomeWeek week;

    @Autowired
    private Plans plans;

    @Autowired
    private ClinicValues values;

    @Autowired
    private PumpBook pumps;

    @Autowired
    private Medicines medicines;

    @Autowired
    private ToxinSessions toxin;

    @Autowired
    private Equipment equipment;

    @Autowired
    private Casts casts;

    @Autowired
    private Surveillance surveillance;

    @Autowired
    private Stimulators stimulators;

    @Autowired
    private Choosing choosing;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private Words words;

    private static List<Viewer.Person> two = List.of();

    /** A parent and a nurse who can sign in, the same for every text: a password takes long to store. */
    private static final Map<Role, SignInRequests.Somebody> SIGN_IN = new EnumMap<>(Role.class);

    private static final Map<AccountId, SecurityContext> SIGNED_IN = new HashMap<>();

    @Autowired
    private Passwords passwords;

    private ChildId child = ChildId.random();
    private SignInRequests.Somebody parentsSignIn;
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    /**
     * A place where a person types.
     *
     * @param name what is typed
     * @param field that a refusal names
     * @param bound the most characters that it takes
     * @param put types it
     * @param read reads it back
     */
    private record Sink(
            String name, String field, int bound, BiConsumer<ChildId, String> put, Function<ChildId, String> read) {}

    private List<Sink> sinks() {
        return List.of(
                new Sink(
                        "what the family is to do",
                        "en",
                        300,
                        (c, text) -> tasks.give(COORDINATOR, c, asked(text)),
                        c -> tasks.forFamily(parent, c).get(0).says().en()),
                new Sink(
                        "why a task can wait",
                        "reason",
                        500,
                        (c, text) -> tasks.setAside(
                                COORDINATOR, tasks.give(COORDINATOR, c, asked("Call us.")), TODAY.plusDays(2), text, 1),
                        c -> tasks.of(COORDINATOR, c).stream()
                                .flatMap(task -> task.aside().stream())
                                .findFirst()
                                .orElseThrow()
                                .reason()),
                new Sink(
                        "why a task is not needed",
                        "reason",
                        500,
                        (c, text) -> tasks.end(
                                COORDINATOR,
                                tasks.give(COORDINATOR, c, asked("Call us.")),
                                Task.Outcome.NOT_NEEDED,
                                text,
                                1),
                        c -> tasks.of(COORDINATOR, c).stream()
                                .flatMap(task -> task.end().stream())
                                .findFirst()
                                .orElseThrow()
                                .reason()),
                new Sink(
                        "note to the team",
                        "note",
                        2000,
                        (c, text) -> signs.report(
                                parent, c, new Signs.ReportData(UUID.randomUUID(), List.of(), false, text)),
                        c -> signs.of(parent, c).get(0).note()),
                new Sink(
                        "note on a session",
                        "note",
                        2000,
                        (c, text) -> week.log(parent, c, session(text)),
                        c -> week.entries(NURSE, c, TODAY, TODAY).get(0).entry().note()),
                new Sink(
                        "note on a program's line",
                        "lines[0].note",
                        500,
                        (c, text) -> programs.save(THERAPIST, c, draft(text, "as agreed"), seen(c)),
                        c -> programs.latest(parent, c)
                                .orElseThrow()
                                .lines()
                                .get(0)
                                .note()),
                new Sink(
                        "reason of a program",
                        "reason",
                        500,
                        (c, text) -> programs.save(THERAPIST, c, draft("", text), seen(c)),
                        c -> programs.latest(parent, c).orElseThrow().reason()),
                new Sink(
                        "reason of a path",
                        "reason",
                        500,
                        (c, text) -> plans.begin(PHYSICIAN, c, "itb", Plans.Beginning.INSTEAD, TODAY, text),
                        c -> plans.decisions(PHYSICIAN, c).get(0).reason()),
                new Sink(
                        "reason of a clinic's own value",
                        "reason",
                        500,
                        (c, text) -> ownValue(text),
                        c -> ofTheClinic().changes().get(1).reason()),
                new Sink(
                        "note on a refill",
                        "note",
                        500,
                        (c, text) -> PumpBooks.refill(pumps, NURSE, c, TODAY, TODAY.plusDays(80), text),
                        c -> ((PumpEntry.Refill) pumps.history(NURSE, c)
                                        .get(0)
                                        .entry()
                                        .orElseThrow()
                                        .what())
                                .details()
                                .note()),
                new Sink(
                        "when a splint is worn",
                        "schedule",
                        500,
                        (c, text) -> equipment.enter(THERAPIST, c, splint(new Item.Wear(none(), none(), text, ""))),
                        c -> equipment.of(parent, c).stream()
                                .map(item -> item.data().wear().schedule())
                                .filter(said -> !said.isEmpty())
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "steps to get used to a splint",
                        "buildUp",
                        500,
                        (c, text) -> equipment.enter(THERAPIST, c, splint(new Item.Wear(none(), none(), "", text))),
                        c -> equipment.of(parent, c).stream()
                                .map(item -> item.data().wear().buildUp())
                                .filter(said -> !said.isEmpty())
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "skin under a cast",
                        "skin0",
                        500,
                        (c, text) -> casts.enter(THERAPIST, c, casts(text)),
                        c -> casts.of(THERAPIST, c).get(0).data().casts().get(0).skin()),
                new Sink(
                        "note on a check",
                        "note",
                        500,
                        (c, text) -> surveillance.record(PHYSICIAN, c, check(c, "Dr. Nwosu", text), checked(c)),
                        c -> surveillance.checks(PHYSICIAN, c, Watched.SPINE).stream()
                                .map(check -> check.data().note())
                                .filter(note -> !note.isEmpty())
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "who did a check",
                        "who",
                        200,
                        (c, text) -> surveillance.record(PHYSICIAN, c, check(c, text, ""), checked(c)),
                        c -> surveillance.checks(PHYSICIAN, c, Watched.SPINE).stream()
                                .map(check -> check.data().who())
                                .filter(who -> !who.equals("Dr. Nwosu"))
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "note on a reading of a stimulator",
                        "note",
                        500,
                        (c, text) -> stimulators.enter(PHYSICIAN, c, reading("C+ 1-", text), read(c)),
                        c -> stimulators.revisions(PHYSICIAN, c).stream()
                                .map(one -> one.reading().data().note())
                                .filter(note -> !note.isEmpty())
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "note to a fact",
                        "hips",
                        160,
                        (c, text) -> choosing.enter(
                                PHYSICIAN,
                                c,
                                Map.of("hips", new Answer.Data(Set.of(), text)),
                                choosing.talk(PHYSICIAN, c).version()),
                        c -> choosing.talk(PHYSICIAN, c)
                                .answers()
                                .get("hips")
                                .data()
                                .note()),
                new Sink(
                        "who was there when it was decided",
                        "present",
                        300,
                        (c, text) -> choosing.decide(PHYSICIAN, c, decided(text, "A reason"), decisions(c)),
                        c -> choosing.decisions(PHYSICIAN, c).get(0).data().present()),
                new Sink(
                        "why it was decided",
                        "reason",
                        500,
                        (c, text) -> choosing.decide(PHYSICIAN, c, decided("The mother", text), decisions(c)),
                        c -> choosing.decisions(PHYSICIAN, c).get(0).data().reason()),
                new Sink(
                        "dose of a medicine",
                        "dose",
                        300,
                        (c, text) -> takes(c, "Gabapentin", text, ""),
                        c -> newest(c).dose()),
                new Sink(
                        "what a medicine is for",
                        "purposeEs",
                        200,
                        (c, text) -> takes(c, "Gabapentin", "5 mg", text),
                        c -> newest(c).purposeEs()),
                new Sink(
                        "note on a toxin session",
                        "note",
                        500,
                        (c, text) -> given(c, "Vial", text),
                        c -> lastGiven(c).note()),
                new Sink(
                        "place of a visit",
                        "place",
                        200,
                        (c, text) -> book(c, text),
                        c -> visits.upcoming(parent, c).get(0).place()),
                new Sink(
                        "wish to move",
                        "wish",
                        500,
                        (c, text) -> visits.askToMove(parent, book(c, ""), 0, text),
                        c -> visits.upcoming(parent, c).stream()
                                .map(visit -> visit.wish())
                                .filter(wish -> !wish.isEmpty())
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "note on a call",
                        "note",
                        500,
                        (c, text) -> outbox.called(COORDINATOR, call(c).id(), true, text, call(c).version()),
                        c -> outbox.of(COORDINATOR, c).stream()
                                .filter(message -> message.state() == Outbox.State.CALLED)
                                .findFirst()
                                .orElseThrow()
                                .note()),
                new Sink(
                        "reason for setting aside",
                        "reason",
                        500,
                        (c, text) -> needs.setAside(NURSE, item(c).id(), TODAY.plusDays(1), text, item(c).version()),
                        c -> item(c).aside().orElseThrow().reason()),
                new Sink(
                        "what came of it",
                        "words",
                        500,
                        (c, text) -> needs.close(NURSE, item(c).id(), Needs.Outcome.SPOKE, text, item(c).version()),
                        c -> needs.left(NURSE, java.time.Instant.EPOCH).stream()
                                .filter(gone -> gone.child().equals(c))
                                .findFirst()
                                .orElseThrow()
                                .left()
                                .orElseThrow()
                                .words()));
    }

    /** Names and other short texts take not all of it, such as line ends; they name the field instead. */
    private List<Sink> names() {
        return List.of(
                new Sink(
                        "contacts of a stimulator",
                        "left-contacts",
                        60,
                        (c, text) -> stimulators.enter(PHYSICIAN, c, reading(text, ""), read(c)),
                        c -> stimulators.revisions(PHYSICIAN, c).stream()
                                .map(one ->
                                        one.reading().data().settings().get(0).contacts())
                                .filter(contacts -> !contacts.equals("C+ 1-"))
                                .findFirst()
                                .orElseThrow()),
                new Sink(
                        "name of a medicine",
                        "name",
                        120,
                        (c, text) -> takes(c, text, "5 mg", ""),
                        c -> newest(c).name()),
                new Sink(
                        "preparation of a toxin",
                        "preparation0",
                        80,
                        (c, text) -> given(c, text, ""),
                        c -> lastGiven(c)
                                .injections()
                                .get(0)
                                .units()
                                .preparation()
                                .name()),
                new Sink(
                        "name of a closed day",
                        "spanish",
                        ClosedDays.LONGEST_NAME,
                        (c, text) -> closed.close(ADMINISTRATOR, LocalDate.of(2028, 3, 1), "Town fair", text),
                        c -> nameOfTheClosedDay()),
                new Sink(
                        "used name",
                        "usedName",
                        80,
                        (c, text) -> change(c, text, "Halloway"),
                        c -> register.get(parent, c).data().names().used()),
                new Sink(
                        "family name",
                        "familyName",
                        120,
                        (c, text) -> change(c, "Wren", text),
                        c -> register.get(parent, c).data().names().surname()),
                new Sink(
                        "name of a caregiver",
                        "name",
                        120,
                        this::invite,
                        c -> households.caregivers(NURSE, c).stream()
                                .map(caregiver -> accounts.byId(NURSE, List.of(caregiver.account())))
                                .flatMap(found -> found.values().stream())
                                .map(account -> account.name())
                                .filter(name -> !name.equals("Ana Lindgren"))
                                .findFirst()
                                .orElseThrow()));
    }

    private ClinicValues.PathOfClinic ofTheClinic() {
        return values.all(ADMINISTRATOR).stream()
                .filter(path -> path.pathway().equals("rehab"))
                .findFirst()
                .orElseThrow();
    }

    /** Given and taken back: the paths of this clinic are everybody's. */
    private void ownValue(String reason) {
        var length = new ValuePlace("block", ValuePlace.Kind.LASTS_MOST, "");
        var seen = ofTheClinic().version();
        values.apply(
                ADMINISTRATOR, "rehab", Map.of(length, Optional.of(new Amount.Gap(Period.ofDays(41)))), reason, seen);
        values.undo(ADMINISTRATOR, "rehab", seen + 1, "as it came", seen + 1);
    }

    /** Opens it again, so that each text can be the next day's name. */
    private String nameOfTheClosedDay() {
        var day = closed.ahead(ADMINISTRATOR).get(0);
        closed.open(ADMINISTRATOR, day.day(), day.version());
        return day.name().es();
    }

    private static Optional<Integer> none() {
        return Optional.empty();
    }

    private static Item.Data splint(Item.Wear wear) {
        return new Item.Data(
                "night-splint",
                Optional.empty(),
                Optional.empty(),
                TODAY,
                Optional.empty(),
                wear,
                none(),
                none(),
                Optional.empty(),
                List.of());
    }

    private static CastSeries.Data casts(String skin) {
        return new CastSeries.Data(
                Place.KNEE,
                Place.Side.LEFT,
                TODAY,
                7,
                Optional.empty(),
                Optional.empty(),
                List.of(new CastSeries.Cast(TODAY, Optional.empty(), none(), skin)));
    }

    /** Of an emergency, in which no generator needs to be on record. */
    private static Reading.ReadingData reading(String contacts, String note) {
        var left = Readings.side(Reading.Side.LEFT, "2.5");
        return Readings.on(TODAY.minusDays(1), "88")
                .set(new Reading.Setting(
                        left.side(), contacts, left.amplitude(), left.unit(), left.pulseWidth(), left.rate()))
                .showing(BatteryUnit.PERCENT, Optional.empty(), List.of(), List.of(), note)
                .inAnEmergency()
                .data();
    }

    private long read(ChildId c) {
        return stimulators.record(PHYSICIAN, c).seen();
    }

    /** Each on a day of its own. */
    private CheckData check(ChildId c, String who, String note) {
        return new CheckData(
                Watched.SPINE,
                TODAY.minusDays(checked(c)),
                who,
                Optional.empty(),
                Optional.empty(),
                none(),
                false,
                note);
    }

    private long checked(ChildId c) {
        return surveillance.outlook(PHYSICIAN, c).stream()
                .filter(outlook -> outlook.matter().watched() == Watched.SPINE)
                .mapToLong(Surveillance.Outlook::seen)
                .sum();
    }

    private static Decision.Data decided(String present, String reason) {
        return new Decision.Data(Optional.empty(), LocalDate.of(2026, 3, 12), present, reason);
    }

    private long decisions(ChildId c) {
        return choosing.decisions(PHYSICIAN, c).size();
    }

    private void change(ChildId c, String usedName, String familyName) {
        var data = ChildData.plain(Names.plain(usedName, familyName), LocalDate.of(2019, 5, 4), Optional.of(3), 2);
        register.change(ADMINISTRATOR, c, data, register.get(ADMINISTRATOR, c).version());
    }

    private void invite(ChildId c, String name) {
        var invited = accounts.invite(
                ADMINISTRATOR,
                new NewAccount(name, People.freshEmail(), "", Set.of(Role.CAREGIVER), Language.EN, People.ZONE));
        households.link(ADMINISTRATOR, c, invited.account(), Reach.VIEW_ONLY);
    }

    private static HomeWeek.Entry session(String note) {
        return new HomeWeek.Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                HomeWeek.Outcome.DONE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(8),
                Optional.of(HomeWeek.RatedBy.ADULT),
                note);
    }

    private static Programs.Draft draft(String note, String reason) {
        var line = Lines.because(ProgramLine.of(
                "bridge",
                new Dose(2, 8, 0, 0, 1),
                ProgramLine.Side.NONE,
                EnumSet.allOf(DayOfWeek.class),
                TODAY,
                Optional.empty(),
                note));
        return new Programs.Draft(TODAY, List.of(line), reason);
    }

    private static Tasks.Asked asked(String text) {
        return new Tasks.Asked(new Assignee.Family(), text, "", TODAY, Optional.empty());
    }

    private void takes(ChildId c, String name, String dose, String purposeEs) {
        var data = new Medicines.MedicineData(
                name,
                "",
                Medicines.How.MOUTH,
                dose,
                Optional.empty(),
                "pain",
                purposeEs,
                TODAY,
                "Dr. Nwosu",
                Optional.empty());
        // the family sees it, too: a second person reads the same
        var known = medicines.current(team().get(0), c).stream().findFirst();
        var written = known.isPresent()
                ? medicines.change(
                        team().get(0), c, known.get().id(), data, known.get().version())
                : medicines.enter(team().get(0), c, data);
        medicines.confirm(
                team().get(1),
                c,
                written.id(),
                new Medicines.Again(dose, Optional.empty(), Optional.empty()),
                written.version());
    }

    /** Two people with accounts of their own, made once: nobody is their own second. */
    private List<Viewer.Person> team() {
        if (two.isEmpty()) {
            two = List.of(
                    Team.member(accounts, passwords, "Nell Harker", Role.NURSE),
                    Team.member(accounts, passwords, "Ondine Farrow", Role.PHYSICIAN));
        }
        return two;
    }

    private Medicines.MedicineData newest(ChildId c) {
        return medicines.current(NURSE, c).get(0).data();
    }

    private void given(ChildId c, String preparation, String note) {
        var place = new ToxinSessions.PlaceData(
                Optional.of("soleus"),
                Optional.of(ToxinSessions.Side.LEFT),
                Optional.of(java.math.BigDecimal.TEN),
                preparation);
        var data =
                new ToxinSessions.SessionData(ToxinSessions.State.GIVEN, TODAY, List.of(place), "Dr. Nwosu", note, "");
        var known = toxin.all(NURSE, c).stream().findFirst();
        known.ifPresentOrElse(
                session -> toxin.change(NURSE, c, session.id(), data, session.version()),
                () -> toxin.enter(NURSE, c, data));
    }

    private ToxinSessions.Session lastGiven(ChildId c) {
        return toxin.all(NURSE, c).get(0);
    }

    private int seen(ChildId c) {
        return programs.latest(THERAPIST, c).map(Programs.Version::number).orElse(0);
    }

    private VisitId book(ChildId c, String place) {
        return visits.book(COORDINATOR, c, new Visits.Booking("operation", VISIT, 45, place, Optional.empty()));
    }

    private Outbox.Message call(ChildId c) {
        if (visits.upcoming(COORDINATOR, c).isEmpty()) {
            book(c, "");
        }
        return outbox.of(COORDINATOR, c).stream()
                .filter(message -> message.channel() == Outbox.Channel.CALL)
                .findFirst()
                .orElseThrow();
    }

    private Needs.Item item(ChildId c) {
        return needs.open(NURSE).stream()
                .filter(open -> open.child().equals(c) && open.cause().rule() == Rule.PAIN)
                .findFirst()
                .orElseThrow();
    }

    @BeforeEach
    void aChildWithOneParent() {
        child = Children.enter(register);
        parentsSignIn = SIGN_IN.computeIfAbsent(Role.CAREGIVER, role -> people.fresh(role));
        parent = People.as(parentsSignIn.account(), Role.CAREGIVER);
        households.link(ADMINISTRATOR, child, parent.account(), Reach.FULL);
    }

    @AfterEach
    void signOut() {
        Pages.leave();
    }

    static Stream<String> hostile() {
        return HostileStrings.all();
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void comesBackLetterForLetterAndStandsAsTextOnEveryPage(String typed) throws Exception {
        for (var sink : sinks()) {
            sink.put().accept(child, typed);
            assertThat(sink.read().apply(child)).as(sink.name()).isEqualTo(typed.strip());
        }
        for (var sink : names()) {
            var refused = catchThrowableOfType(Invalid.class, () -> sink.put().accept(child, typed));
            if (refused == null) {
                assertThat(sink.read().apply(child)).as(sink.name()).isEqualTo(typed.strip());
            } else {
                assertThat(refused.problems())
                        .as(sink.name())
                        .extracting(p -> p.field())
                        .containsOnly(sink.field());
                assertThat(typed.chars().anyMatch(Character::isISOControl) || typed.length() > sink.bound())
                        .as(sink.name())
                        .isTrue();
            }
        }
        var familys = pages(
                parentsSignIn,
                "family.TodayView",
                "family.DatesView",
                "family.PathView",
                "family.CallView",
                "family.NotesView",
                "family.WeekView",
                "family.AlongsideView");
        staysText(familys, typed);
        assertThat(shown(familys)).contains(typed.strip());
        var folder = pages(
                SIGN_IN.computeIfAbsent(Role.NURSE, role -> people.fresh(role)),
                "path.ui.PathView",
                "pump.ui.PumpView",
                "stimulator.ui.StimulatorView",
                "medicine.ui.MedicinesView",
                "task.ui.TasksView",
                "sign.ui.SignsView",
                "equipment.ui.EquipmentView",
                "surveillance.ui.SurveillanceView",
                "choosing.ui.ChoosingView",
                "program.ui.ProgramView");
        staysText(folder, typed);
        assertThat(shown(folder)).contains(typed.strip());
        assertThat(trail.newest(ADMINISTRATOR, 100))
                .noneMatch(line -> line.what().contains(typed.strip()));
        assertThat(outbox.of(COORDINATOR, child))
                .filteredOn(message -> message.channel() == Outbox.Channel.MAIL)
                .isNotEmpty()
                .noneMatch(mail ->
                        mail.subject().contains(typed.strip()) || mail.body().contains(typed.strip()));
    }

    /** Pages as a person sees them, about the child. */
    private List<Component> pages(SignInRequests.Somebody somebody, String... names) throws Exception {
        var opened = new Pages(program, web);
        var known = SIGNED_IN.get(somebody.account());
        if (known == null) {
            SIGNED_IN.put(somebody.account(), opened.signedIn(somebody));
        } else {
            SecurityContextHolder.setContext(known);
        }
        return Arrays.stream(names).map(name -> page(opened, name)).toList();
    }

    private Component page(Pages opened, String name) {
        try {
            var page = opened.made(Class.forName(Code.ROOT + "." + name));
            Pages.enter(page, child.toString());
            return (Component) page;
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String shown(List<Component> pages) {
        var told = new StringBuilder();
        pages.stream()
                .flatMap(page -> elements(page.getElement()))
                .filter(Element::isTextNode)
                .forEach(text -> told.append(text.getText()).append('\n'));
        return told.toString();
    }

    private static void staysText(List<Component> pages, String typed) {
        var elements =
                pages.stream().flatMap(page -> elements(page.getElement())).toList();
        assertThat(elements)
                .filteredOn(e -> !e.isTextNode() && e.getProperty("innerHTML") != null)
                .allMatch(e -> e.getClassList().contains("hw-drawing"))
                .noneMatch(e -> e.getProperty("innerHTML").contains("taken"));
        assertThat(elements)
                .filteredOn(e -> !e.isTextNode() && e.hasAttribute("href"))
                .noneMatch(e -> e.getAttribute("href").contains(typed));
    }

    private static Stream<Element> elements(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(HostileTextTests::elements));
    }

    @Test
    void tenThousandCharactersAreRefusedWithTheFieldTheBoundAndTheWayOut() {
        var tooLong = "A long day. ".repeat(1000).substring(0, 10_000);
        week.log(parent, child, session("it hurt"));
        for (var sink : Stream.concat(sinks().stream(), names().stream()).toList()) {
            var refused = catchThrowableOfType(Invalid.class, () -> sink.put().accept(child, tooLong));
            assertThat(refused).as(sink.name()).isNotNull();
            assertThat(refused.problems()).as(sink.name()).singleElement().satisfies(problem -> {
                assertThat(problem.field()).isEqualTo(sink.field());
                for (var language : Language.values()) {
                    // a bound, then what to do: more than one sentence, or a sentence that says both
                    assertThat(words.say(language, problem).replaceAll("[.,\\u00a0\\h](?=\\d)", ""))
                            .contains(String.valueOf(sink.bound()))
                            .hasSizeGreaterThan(30)
                            .doesNotContain("A long day");
                }
            });
        }
    }
}
