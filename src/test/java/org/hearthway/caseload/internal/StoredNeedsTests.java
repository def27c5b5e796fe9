package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;
import org.hearthway.content.ContentReading;
import org.hearthway.content.Provenance;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Tapers;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.program.CareTurns;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.Progress;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.reminder.StaffMail;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.sign.events.ReportRead;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.task.Tasks;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

@SpringJUnitConfig
class StoredNeedsTests {

    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate REFILL_BY = LocalDate.of(2026, 3, 24);
    private static final Provenance UNREVIEWED =
            new Provenance("common practice, no source", 1, Optional.empty(), Optional.empty());

    @Configuration(proxyBeanMethods = false)
    @Import({
        LeanClinic.class,
        NeedsContent.class,
        FigureRows.class,
        ClinicBook.class,
        StoredFigures.class,
        ChildFacts.class,
        DosesInDoubt.class,
        PathFacts.class,
        NeedItems.class,
        NeedsWatch.class,
        StimulatorFacts.class,
        NeedSteps.class,
        NeedTurns.class,
        Escalations.class,
        StoredNeeds.class
    })
    static class Parts {
        @Bean
        Signs signs() {
            return mock(Signs.class);
        }

        @Bean
        HomeWeek homeWeek() {
            return mock(HomeWeek.class);
        }

        @Bean
        AuditTrail trail() {
            return mock(AuditTrail.class);
        }

        @Bean
        Programs programs() {
            return mock(Programs.class);
        }

        @Bean
        CareTurns turns() {
            return mock(CareTurns.class);
        }

        @Bean
        Progress progress() {
            return mock(Progress.class);
        }

        @Bean
        Plans plans() {
            return mock(Plans.class);
        }

        @Bean
        PathDevices devices() {
            return mock(PathDevices.class);
        }

        @Bean
        Pumps pumps() {
            return mock(Pumps.class);
        }

        @Bean
        Visits visits() {
            return mock(Visits.class);
        }

        @Bean
        Tasks tasks() {
            return mock(Tasks.class);
        }

        @Bean
        Medicines medicines() {
            return mock(Medicines.class);
        }

        @Bean
        Tapers tapers() {
            return mock(Tapers.class);
        }

        @Bean
        Stimulators stimulators() {
            Stimulators none = mock();
            when(none.record(any(), any())).thenReturn(new Stimulators.OnRecord(List.of(), List.of(), 0));
            return none;
        }

        @Bean
        Surveillance surveillance() {
            return mock(Surveillance.class);
        }

        @Bean
        ChildRegister children() {
            return mock(ChildRegister.class);
        }

        @Bean
        Accounts accounts() {
            return mock(Accounts.class);
        }

        @Bean
        OnCall onCall() {
            var nobody = mock(OnCall.class);
            when(nobody.now(any()))
                    .thenReturn(new OnCall.Kept(OnCall.Order.unsaid(), Optional.empty(), Optional.empty(), 0));
            return nobody;
        }

        @Bean
        StaffMail staffMail() {
            return mock(StaffMail.class);
        }
    }

    @Autowired
    private Needs needs;

    @Autowired
    private NeedsWatch watch;

    @Autowired
    private NeedItems items;

    @Autowired
    private Signs signs;

    @Autowired
    private HomeWeek homeWeek;

    @Autowired
    private Programs programs;

    @Autowired
    private CareTurns turns;

    @Autowired
    private Pumps pumps;

    @Autowired
    private Visits visits;

    @Autowired
    private ChildRegister children;

    @Autowired
    private Accounts accounts;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private SettableClock clock;

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private PlatformTransactionManager transactions;

    private final Viewer.Person nurse = People.with(Role.NURSE);
    private final ChildId child = ChildId.random();

    @BeforeEach
    void setUp(@Autowired NeedsContent content) {
        assertThat(ContentReading.shipped(content)).isEmpty();
        clock.set(HearthwayTest.START);
        gate.deny();
        when(pumps.refill(any(), eq(child)))
                .thenReturn(Optional.of(new Refill(
                        TODAY.minusDays(80),
                        Optional.of(RefillWindow.of(
                                TODAY.minusDays(80),
                                Optional.empty(),
                                Optional.of(REFILL_BY.plusDays(5)),
                                Optional.empty(),
                                RefillRules.usual(),
                                day -> true)),
                        false)));
        when(accounts.byId(any(), any()))
                .thenReturn(Map.of(
                        nurse.account(),
                        new Account(
                                nurse.account(),
                                "Nurse",
                                "n@clinic.example",
                                "",
                                Set.of(Role.NURSE),
                                Language.EN,
                                ZONE,
                                Account.State.ACTIVE)));
        watch.look(child);
    }

    private List<Item> mine() {
        return needs.open(nurse).stream()
                .filter(item -> item.child().equals(child))
                .toList();
    }

    private Item only() {
        assertThat(mine()).hasSize(1);
        return mine().get(0);
    }

    private void book() {
        var kind = new VisitKind(
                "refill",
                Bilingual.same("Refill"),
                45,
                Bilingual.same("nurse"),
                List.of(),
                List.of(),
                true,
                Set.of(),
                UNREVIEWED);
        var visit = new Visit(
                new VisitId(UUID.randomUUID()),
                child,
                kind,
                REFILL_BY.atTime(LocalTime.of(9, 0)),
                ZONE,
                45,
                "",
                Optional.empty(),
                Visit.Answer.NONE,
                "",
                Visit.State.BOOKED,
                1,
                1);
        when(visits.upcoming(any(), eq(child))).thenReturn(List.of(visit));
        watch.look(child);
    }

    private UUID report(Sign.Urgency urgency) {
        var key = UUID.randomUUID();
        var sign = new Sign("s", Sign.Topic.ANY_CHILD, urgency, Bilingual.same("says"), UNREVIEWED);
        when(signs.of(any(), eq(child)))
                .thenReturn(List.of(new Signs.Report(
                        key,
                        child,
                        List.of(sign),
                        Optional.of(urgency),
                        true,
                        "",
                        "Parent",
                        clock.instant(),
                        Optional.empty())));
        watch.look(child);
        return key;
    }

    private static String key(Throwable thrown) {
        return ((Invalid) thrown)
                .problems().stream().map(Problem::key).findFirst().orElse("");
    }

    @Test
    void aNearRefillWithoutAVisitStandsOnTheList() {
        assertThat(only().cause().rule()).isEqualTo(Rule.REFILL);
        assertThat(only().owner()).isEmpty();
    }

    private static Programs.Version savedOn(LocalDate day) {
        return new Programs.Version(
                1,
                day,
                List.of(),
                AccountId.random(),
                day.atTime(9, 0).atZone(LeanClinic.NEW_YORK).toInstant(),
                "first steps",
                "");
    }

    @Test
    void whatACareRuleShutsOffStandsThereUntilTheProgramIsSaved() {
        var rule = new Template.Precaution(
                "passive-trunk-twist", true, Period.ZERO, Optional.empty(), Bilingual.same("care"), "test");
        var care = new Plan.Care(rule, TODAY, TODAY.plusDays(40));
        when(turns.between(any(), eq(child), any(), any()))
                .thenReturn(List.of(
                        new CareTurns.Turn("roll-helper", care, TODAY, true, true),
                        new CareTurns.Turn("long-sit-reach", care, TODAY, true, false)));
        when(programs.latest(any(), eq(child))).thenReturn(Optional.of(savedOn(TODAY.minusDays(1))));
        watch.look(child);
        assertThat(mine())
                .filteredOn(item -> item.cause().rule() == Rule.CARE_TURN)
                .singleElement()
                .satisfies(item -> assertThat(item.cause().count()).isEqualTo(1));
        when(programs.latest(any(), eq(child))).thenReturn(Optional.of(savedOn(TODAY)));
        watch.look(child);
        assertThat(mine()).noneMatch(item -> item.cause().rule() == Rule.CARE_TURN);
    }

    @Test
    void lookingTwiceOpensOneItem() {
        watch.look(child);
        watch.look(child);
        assertThat(mine()).hasSize(1);
    }

    @Test
    void itLeavesWhenTheVisitIsBookedAndSaysSo() {
        var item = only();
        book();
        assertThat(mine()).isEmpty();
        var left = needs.left(nurse, HearthwayTest.START).stream()
                .filter(gone -> gone.id().equals(item.id()))
                .findFirst()
                .flatMap(Item::left)
                .orElseThrow();
        assertThat(left.gone()).contains(Gone.VISIT_BOOKED);
        assertThat(left.by()).isEmpty();
    }

    @Test
    void itComesBackWhenTheVisitIsCancelled() {
        book();
        when(visits.upcoming(any(), eq(child))).thenReturn(List.of());
        watch.look(child);
        assertThat(mine()).hasSize(1);
    }

    @Test
    void takingMakesTheViewerItsOwner() {
        needs.take(nurse, only().id(), only().version());
        assertThat(only().owner()).map(Needs.Person::account).contains(nurse.account());
        assertThat(only().owner()).map(Needs.Person::name).contains("Nurse");
    }

    @Test
    void aStaleVersionIsRefusedAndChangesNothing() {
        var before = only();
        needs.take(nurse, before.id(), before.version());
        var other = People.with(Role.NURSE);
        assertThatThrownBy(() -> needs.take(other, before.id(), before.version()))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> needs.see(other, before.id(), before.version()))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> needs.setAside(other, before.id(), TODAY.plusDays(2), "on leave", before.version()))
                .isInstanceOf(Overtaken.class);
        assertThat(only().owner()).map(Needs.Person::account).contains(nurse.account());
    }

    @Test
    void aFactThatGrowsDoesNotOvertakeAPerson() {
        var before = only();
        clock.set(Instant.parse("2026-03-14T14:00:00Z"));
        watch.look(child);
        needs.take(nurse, before.id(), before.version());
        assertThat(only().owner()).isPresent();
    }

    @Test
    void aRefillIsNotClosedByWords() {
        var item = only();
        assertThatThrownBy(() -> needs.close(nurse, item.id(), Outcome.SPOKE, "they will call", item.version()))
                .satisfies(thrown -> assertThat(key(thrown)).isEqualTo("caseload.close.cause-stands.REFILL"));
        assertThat(mine()).hasSize(1);
    }

    @Test
    void settingAsideHidesUntilTheDay() {
        var item = only();
        needs.setAside(nurse, item.id(), TODAY.plusDays(2), "  family away  ", item.version());
        assertThat(only().aside()).contains(new Needs.Aside(TODAY.plusDays(2), "family away"));
        clock.set(Instant.parse("2026-03-14T14:00:00Z"));
        assertThat(only().aside()).as("on the day it is back").isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 8, 400})
    void settingAsideKeepsWithinItsBounds(int days) {
        var item = only();
        assertThatThrownBy(() -> needs.setAside(nurse, item.id(), TODAY.plusDays(days), "family away", item.version()))
                .satisfies(thrown -> assertThat(key(thrown)).isEqualTo("caseload.aside.bounds"));
        assertThat(only().aside()).isEmpty();
    }

    @Test
    void aRefillIsNotSetAsideBeyondItsDate() {
        clock.set(Instant.parse("2026-03-22T14:00:00Z"));
        var item = only();
        assertThatThrownBy(() -> needs.setAside(nurse, item.id(), REFILL_BY.plusDays(1), "later", item.version()))
                .isInstanceOf(Invalid.class);
        needs.setAside(nurse, item.id(), REFILL_BY, "later", item.version());
        assertThat(only().aside()).isPresent();
        clock.set(Instant.parse("2026-03-24T14:00:00Z"));
        var due = only();
        assertThatThrownBy(() -> needs.setAside(nurse, due.id(), REFILL_BY.plusDays(1), "later", due.version()))
                .satisfies(thrown -> assertThat(key(thrown)).isEqualTo("caseload.aside.too-late"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2, 501, 10_000})
    void aReasonHasThreeToFiveHundredCharacters(int length) {
        var item = only();
        assertThatThrownBy(
                        () -> needs.setAside(nurse, item.id(), TODAY.plusDays(1), "x".repeat(length), item.version()))
                .satisfies(thrown -> assertThat(key(thrown)).isEqualTo("caseload.words.bounds"));
    }

    @Test
    void bringingBackShowsItAtOnce() {
        var item = only();
        needs.setAside(nurse, item.id(), TODAY.plusDays(2), "family away", item.version());
        needs.resume(nurse, item.id(), only().version());
        assertThat(only().aside()).isEmpty();
    }

    @Test
    void everyStepIsKept() {
        var item = only();
        needs.take(nurse, item.id(), item.version());
        needs.see(nurse, item.id(), only().version());
        needs.setAside(nurse, item.id(), TODAY.plusDays(1), "family away", only().version());
        assertThat(only().version()).isEqualTo(item.version() + 3);
        assertThat(only().seen()).map(seen -> seen.by().account()).contains(nurse.account());
    }

    @Test
    void aReportStaysUntilAPersonClosesItAndThenStaysGone() {
        book();
        report(Sign.Urgency.URGENT);
        var item = only();
        assertThat(item.cause().dueAt()).contains(HearthwayTest.START.plusSeconds(3_600));
        assertThatThrownBy(() -> needs.setAside(nurse, item.id(), TODAY.plusDays(1), "later", item.version()))
                .satisfies(thrown -> assertThat(key(thrown)).isEqualTo("caseload.aside.never"));
        needs.close(nurse, item.id(), Outcome.SPOKE, "seen in clinic", item.version());
        watch.look(child);
        assertThat(mine()).isEmpty();
        var left = needs.left(nurse, HearthwayTest.START).stream()
                .filter(closed -> closed.id().equals(item.id()))
                .findFirst()
                .flatMap(Item::left)
                .orElseThrow();
        assertThat(left.outcome()).contains(Outcome.SPOKE);
        assertThat(left.words()).isEqualTo("seen in clinic");
        assertThat(left.by()).map(Needs.Person::account).contains(nurse.account());
    }

    @Test
    void closingAReportReadsItForTheFamily() {
        book();
        var key = report(Sign.Urgency.URGENT);
        var item = only();
        needs.close(nurse, item.id(), Outcome.SPOKE, "seen in clinic", item.version());
        verify(signs).read(nurse, child, key);
        assertThat(needs.left(nurse, HearthwayTest.START))
                .filteredOn(left -> left.id().equals(item.id()))
                .singleElement()
                .satisfies(left ->
                        assertThat(left.seen()).map(seen -> seen.by().account()).contains(nurse.account()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "left_at = current_timestamp",
                "left_at = current_timestamp, left_outcome = 'SPOKE'",
                "left_at = current_timestamp, left_outcome = 'SPOKE', left_by = id",
                "aside_until = current_date"
            })
    void nothingLeavesTheListWithoutAnOutcomeNorIsSetAsideWithoutAReason(
            String behindItsBack, @Autowired JdbcClient jdbc) {
        var item = only();
        assertThatThrownBy(() -> jdbc.sql("update need_item set " + behindItsBack + " where id = ?")
                        .param(item.id())
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThat(only()).isEqualTo(item);
    }

    @Test
    void whatCannotWaitStandsFirst() {
        report(Sign.Urgency.NOW);
        assertThat(mine()).extracting(item -> item.cause().rule()).containsExactly(Rule.SIGN, Rule.REFILL);
    }

    @Test
    void seeingAReportReadsItForTheFamily() {
        book();
        var key = report(Sign.Urgency.HOURS);
        var item = only();
        needs.see(nurse, item.id(), item.version());
        verify(signs).read(nurse, child, key);
        assertThat(only().seen()).isPresent();
    }

    @Test
    void aReportReadElsewhereIsSeenHere() {
        book();
        var key = report(Sign.Urgency.HOURS);
        events.publishEvent(new ReportRead(child, nurse, clock.instant(), key));
        assertThat(only().seen()).map(seen -> seen.by().account()).contains(nurse.account());
    }

    @Test
    void aPainStandsThereAsSoonAsItIsLogged() {
        book();
        var entry = new HomeWeek.Entry(
                UUID.randomUUID(),
                "calf-wall",
                TODAY,
                HomeWeek.Outcome.SOME,
                Optional.empty(),
                Optional.empty(),
                Optional.of(8),
                Optional.of(HomeWeek.RatedBy.CHILD),
                "");
        when(homeWeek.entries(any(), eq(child), any(), any()))
                .thenReturn(List.of(new HomeWeek.Logged(entry, "Parent", clock.instant())));
        var parent = People.with(Role.CAREGIVER);
        var logged =
                new SessionLogged(child, parent, clock.instant(), entry.key(), entry.exercise(), TODAY, entry.pain());
        new TransactionTemplate(transactions).executeWithoutResult(tx -> {
            events.publishEvent(logged);
            tx.setRollbackOnly();
        });
        assertThat(mine()).as("undone with what caused it").isEmpty();
        events.publishEvent(logged);
        assertThat(only().cause().count()).isEqualTo(8);
    }

    @Test
    void silentDaysAreFoundByTheRegularLookAndAnsweredOnes() {
        book();
        somethingPlannedAfterToday();
        when(children.all(any())).thenReturn(List.of(new Child(child, Data.WREN, 1)));
        clock.set(Instant.parse("2026-03-15T14:00:00Z"));
        watch.lookAtAll();
        assertThat(mine()).as("two days over, the third is today").isEmpty();
        clock.set(Instant.parse("2026-03-16T14:00:00Z"));
        watch.lookAtAll();
        var item = only();
        assertThat(item.cause().count()).isEqualTo(3);
        clock.set(Instant.parse("2026-03-17T14:00:00Z"));
        watch.lookAtAll();
        assertThat(only().cause().count()).isEqualTo(4);
        needs.close(nurse, item.id(), Outcome.SPOKE, "on holiday", item.version());
        watch.lookAtAll();
        assertThat(mine()).isEmpty();
        clock.set(Instant.parse("2026-03-21T14:00:00Z"));
        watch.lookAtAll();
        assertThat(only().cause().count())
                .as("three more silent days after the answer")
                .isEqualTo(3);
    }

    private void somethingPlannedAfterToday() {
        when(homeWeek.days(any(), eq(child), any(), anyInt())).thenAnswer(call -> {
            LocalDate from = call.getArgument(2);
            int count = call.getArgument(3);
            return from.datesUntil(from.plusDays(count))
                    .map(day -> new HomeWeek.Day(
                            day, day.isAfter(TODAY) ? List.of(mock(HomeWeek.Planned.class)) : List.of()))
                    .toList();
        });
    }

    @Test
    void whatWasLoggedOutsideThePlanDoesNotBreakTheSilence() {
        book();
        somethingPlannedAfterToday();
        var unplanned = new HomeWeek.Entry(
                UUID.randomUUID(),
                "calf-wall",
                TODAY.plusDays(3),
                HomeWeek.Outcome.DONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        when(homeWeek.entries(any(), eq(child), any(), any()))
                .thenReturn(List.of(new HomeWeek.Logged(unplanned, "Parent", clock.instant())));
        clock.set(Instant.parse("2026-03-16T14:00:00Z"));
        watch.look(child);
        assertThat(only().cause().count()).isEqualTo(3);
    }

    @Test
    void manyAtOnceOpenOneItem() throws Exception {
        book();
        report(Sign.Urgency.HOURS);
        needs.close(nurse, only().id(), Outcome.SPOKE, "answered", only().version());
        report(Sign.Urgency.HOURS);
        var pool = Executors.newFixedThreadPool(4);
        try {
            Callable<Void> look = () -> {
                watch.look(child);
                return null;
            };
            for (var done : pool.invokeAll(java.util.Collections.nCopies(16, look))) {
                done.get();
            }
        } finally {
            pool.shutdownNow();
        }
        assertThat(mine()).hasSize(1);
    }

    @Test
    void refusesWhoMayNot() {
        var item = only();
        gate.deny(Action.WORK_NEEDS);
        assertThatThrownBy(() -> needs.take(nurse, item.id(), item.version())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> needs.see(nurse, item.id(), item.version())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> needs.setAside(nurse, item.id(), TODAY.plusDays(1), "later", item.version()))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> needs.resume(nurse, item.id(), item.version())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> needs.close(nurse, item.id(), Outcome.SPOKE, "done", item.version()))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.LIST_CHILDREN);
        assertThatThrownBy(() -> needs.open(nurse)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> needs.left(nurse, HearthwayTest.START)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void doesNotTellOfChildrenOutOfReach() {
        gate.deny(Action.SEE_FOLDER);
        assertThat(needs.open(nurse)).isEmpty();
    }

    @Test
    void answersAnUnknownItemLikeOneOutOfReach() {
        assertThatThrownBy(() -> needs.take(nurse, UUID.randomUUID(), 1)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void keepsHostileWordsAsTheyAre() {
        HostileStrings.all().filter(text -> text.strip().length() >= 3).forEach(text -> {
            var item = only();
            needs.setAside(nurse, item.id(), TODAY.plusDays(1), text, item.version());
            assertThat(only().aside()).map(Needs.Aside::reason).contains(text.strip());
        });
        assertThat(items.openOf(child)).hasSize(1);
    }

    private static final class Data {
        static final ChildData WREN =
                ChildData.plain(Names.plain("Wren", "Halloway"), LocalDate.of(2019, 5, 4), Optional.of(3), 2);
    }
}
