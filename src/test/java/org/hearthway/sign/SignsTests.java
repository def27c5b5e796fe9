package org.hearthway.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.content.SignOff;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs.ReportData;
import org.hearthway.sign.events.ReportRead;
import org.hearthway.sign.events.SignReported;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@HearthwayTest
@RecordApplicationEvents
class SignsTests {

    @Autowired
    private Signs signs;

    @Autowired
    private SignOff signOff;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Accounts accounts;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private SettableClock clock;

    @Autowired
    private Words words;

    @Autowired
    private ApplicationEvents events;

    private final Viewer.Person administrator = People.with(Role.ADMINISTRATOR);
    private ChildId child;
    private Viewer.Person parent;
    private Viewer.Person nurse;

    @BeforeEach
    void aChildWithAParentAndANurse() {
        clock.set(HearthwayTest.START);
        child = Children.enter(register);
        parent = People.as(invited("Iris Halloway", Role.CAREGIVER), Role.CAREGIVER);
        households.link(administrator, child, parent.account(), Reach.FULL);
        nurse = People.as(invited("Ada Okoro", Role.NURSE), Role.NURSE);
    }

    private AccountId invited(String name, Role role) {
        return accounts.invite(
                        administrator,
                        new NewAccount(
                                name,
                                People.freshEmail(),
                                "",
                                Set.of(role),
                                Language.EN,
                                ZoneId.of("America/New_York")))
                .account();
    }

    private static ReportData report(String note, String... signs) {
        return new ReportData(UUID.randomUUID(), List.of(signs), true, note);
    }

    @Test
    void keepsAReportWithTheMostUrgentOfItsSigns() {
        signs.report(parent, child, report("since noon", "pump-itch", "pump-beep-unwell", "pump-moved"));

        assertThat(signs.of(nurse, child)).singleElement().satisfies(kept -> {
            assertThat(kept.signs())
                    .extracting(Sign::id)
                    .containsExactly("pump-itch", "pump-beep-unwell", "pump-moved");
            assertThat(kept.urgency()).contains(Urgency.NOW);
            assertThat(kept.note()).isEqualTo("since noon");
            assertThat(kept.called()).isTrue();
            assertThat(kept.by()).isEqualTo("Iris Halloway");
            assertThat(kept.at()).isEqualTo(HearthwayTest.START);
            assertThat(kept.read()).isEmpty();
        });
        assertThat(events.stream(SignReported.class))
                .singleElement()
                .satisfies(event -> assertThat(event.urgency()).contains("NOW"));
    }

    @Test
    void takesANoteWithoutASign() {
        signs.report(parent, child, report("  May she swim?\nThank you.  "));
        assertThat(signs.of(parent, child)).singleElement().satisfies(kept -> {
            assertThat(kept.urgency()).isEmpty();
            assertThat(kept.note()).isEqualTo("May she swim?\nThank you.");
        });
    }

    @Test
    void listsTheNewestFirst() {
        signs.report(parent, child, report("first"));
        clock.advance(Duration.ofMinutes(5));
        signs.report(parent, child, report("second"));
        assertThat(signs.of(parent, child)).extracting(Signs.Report::note).containsExactly("second", "first");
    }

    @Test
    void countsTheSameKeyOnce() {
        var twice = report("sent twice", "pump-beep");
        signs.report(parent, child, twice);
        signs.report(parent, child, twice);
        assertThat(signs.of(parent, child)).hasSize(1);
        assertThat(events.stream(SignReported.class)).hasSize(1);
    }

    @Test
    void countsTheSameKeyOnceWhenSentTwiceAtTheSameMoment() throws Exception {
        var data = report("sent twice", "pump-beep");
        var pool = Executors.newFixedThreadPool(8);
        try {
            var senders = new ArrayList<Callable<Void>>();
            for (int i = 0; i < 8; i++) {
                senders.add(() -> {
                    signs.report(parent, child, data);
                    return null;
                });
            }
            for (var sent : pool.invokeAll(senders)) {
                sent.get();
            }
        } finally {
            pool.shutdown();
        }
        assertThat(signs.of(parent, child)).hasSize(1);
    }

    @Test
    void doesNotLetAKeyBeUsedForAnotherChild() {
        var other = Children.enter(register);
        households.link(administrator, other, parent.account(), Reach.FULL);
        var data = report("hello");
        signs.report(parent, child, data);
        assertThatThrownBy(() -> signs.report(parent, other, data)).isInstanceOf(NotAvailable.class);
        assertThat(signs.of(parent, other)).isEmpty();
    }

    private List<Problem> problems(ReportData data) {
        try {
            signs.report(parent, child, data);
        } catch (Invalid invalid) {
            return invalid.problems();
        }
        throw new AssertionError("taken");
    }

    @Test
    void refusesANoteOfTenThousandCharactersAndNamesTheBound() {
        var problem = problems(report("x".repeat(10_000))).get(0);
        assertThat(problem.field()).isEqualTo("note");
        assertThat(words.say(Language.EN, problem)).contains("10,000", "2,000");
        assertThat(words.say(Language.ES, problem)).contains("10,000", "2,000");
        assertThat(signs.of(parent, child)).isEmpty();
    }

    @Test
    void takesANoteOfTheLongestLength() {
        signs.report(parent, child, report("ñ".repeat(2_000)));
        assertThat(signs.of(parent, child)).hasSize(1);
    }

    @Test
    void refusesAnEmptyNoteAndAnUnknownSign() {
        assertThat(problems(report("  \n "))).extracting(Problem::field).containsExactly("note");
        assertThat(problems(report("", "no-such-sign")))
                .extracting(Problem::field)
                .containsExactly("signs");
    }

    @Test
    void saysWhoReadItAndWhenAndKeepsTheFirst() {
        var data = report("", "pump-beep");
        signs.report(parent, child, data);
        clock.advance(Duration.ofMinutes(12));
        signs.read(nurse, child, data.key());
        clock.advance(Duration.ofMinutes(1));
        signs.read(People.with(Role.PHYSICIAN), child, data.key());

        assertThat(signs.of(parent, child))
                .singleElement()
                .extracting(Signs.Report::read, InstanceOfAssertFactories.optional(Signs.Read.class))
                .contains(
                        new Signs.Read(nurse.account(), "Ada Okoro", HearthwayTest.START.plus(Duration.ofMinutes(12))));
        assertThat(events.stream(ReportRead.class)).hasSize(1);
    }

    @Test
    void aReportOfAnotherChildCannotBeMarkedAsRead() {
        var data = report("", "pump-beep");
        signs.report(parent, child, data);
        var other = Children.enter(register);
        assertThatThrownBy(() -> signs.read(nurse, other, data.key())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signs.read(nurse, child, UUID.randomUUID())).isInstanceOf(NotAvailable.class);
    }

    @Test
    void whoMaySeeOnlyReportsNothing() {
        var grandparent = Children.caregiver(households, child, Reach.VIEW_ONLY);
        assertThatThrownBy(() -> signs.report(grandparent, child, report("hello")))
                .isInstanceOf(NotAvailable.class);
        assertThat(signs.of(grandparent, child)).isEmpty();
    }

    @Test
    void aParentMarksNothingAsRead() {
        var data = report("hello");
        signs.report(parent, child, data);
        assertThatThrownBy(() -> signs.read(parent, child, data.key())).isInstanceOf(NotAvailable.class);
    }

    @Test
    void anotherFamilysChildIsNotAvailableAndTheRefusalStaysInTheTrail() {
        var stranger = People.with(Role.CAREGIVER);
        var before = refusals(stranger);
        assertThatThrownBy(() -> signs.of(stranger, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signs.topics(stranger, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signs.report(stranger, child, report("hello"))).isInstanceOf(NotAvailable.class);
        assertThat(refusals(stranger)).isEqualTo(before + 3);
    }

    private long refusals(Viewer viewer) {
        return trail.newest(administrator, 100).stream()
                .filter(line -> line.actor().equals(viewer.tag()))
                .count();
    }

    @Test
    void whoRunsTheClinicReadsNoReports() {
        assertThatThrownBy(() -> signs.of(administrator, child)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void rulesNoTopicOutForAChildOnNoPath() {
        assertThat(signs.topics(parent, child)).containsExactlyInAnyOrder(Sign.Topic.values());
    }

    @Test
    void showsFamiliesOnlyWhatAnAdministratorAccepted() {
        var hidden = signs.find("stimulator-hit").orElseThrow();
        assertThat(signs.all()).doesNotContain(hidden);

        var beep = signs.find("pump-beep").orElseThrow();
        signOff.accept(
                administrator,
                List.of(new SignOff.Item("signs", "pump-beep", beep.provenance().version())));

        assertThat(signs.all()).contains(beep).doesNotContain(hidden);
    }

    @ParameterizedTest
    @MethodSource("org.hearthway.testing.HostileStrings#all")
    void keepsWhatWasWrittenLetterByLetter(String hostile) {
        signs.report(parent, child, report(hostile));
        assertThat(signs.of(nurse, child))
                .singleElement()
                .satisfies(kept -> assertThat(kept.note()).isEqualTo(hostile.strip()));
    }
}
