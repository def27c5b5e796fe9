package org.hearthway.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.content.SignOff;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.sign.Signs;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.Helping;
import org.hearthway.testing.People;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** AC4: what a helper sees of a week and leaves in it. */
@HearthwayTest
class HelpersWeekTests {

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final String WORDS = "She cried a lot, her father had shouted.";

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Helpers helpers;

    @Autowired
    private Programs programs;

    @Autowired
    private ExerciseLibrary library;

    @Autowired
    private SignOff signOff;

    @Autowired
    private HomeWeek week;

    @Autowired
    private Signs signs;

    private final Viewer.Person helper = new Viewer.Person(
            org.hearthway.base.AccountId.random(),
            "Odile Farrow",
            java.util.Set.of(Role.HELPER),
            Language.EN,
            People.ZONE);
    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWithAProgramAndAHelper() {
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Reach.FULL);
        Helping.until(TODAY.plusDays(10), helpers, households, child, helper.account());
        var bridge = library.find("bridge").orElseThrow();
        signOff.accept(People.with(Role.ADMINISTRATOR), List.of(bridge.item()));
        programs.save(
                People.with(Role.THERAPIST),
                child,
                new Programs.Draft(
                        TODAY,
                        List.of(Lines.because(ProgramLine.of(
                                "bridge",
                                bridge.usual(),
                                Side.NONE,
                                EnumSet.allOf(DayOfWeek.class),
                                TODAY,
                                Optional.empty(),
                                "Count aloud."))),
                        "First weeks"),
                0);
    }

    private static Entry entry(String note) {
        return new Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                Outcome.DONE,
                Optional.empty(),
                Optional.of(4),
                Optional.of(2),
                Optional.of(RatedBy.ADULT),
                note);
    }

    @Test
    void everythingAHelperLogsCarriesTheName() {
        week.log(helper, child, entry(""));

        assertThat(week.entries(parent, child, TODAY, TODAY))
                .singleElement()
                .satisfies(logged -> assertThat(logged.by()).isEqualTo("Odile Farrow"));
    }

    @Test
    void aHelperSeesHowItWentAndNoneOfTheFamilysWords() {
        week.log(parent, child, entry(WORDS));

        var seen = week.days(helper, child, TODAY, 1).get(0).planned().get(0);
        assertThat(seen.line().note()).isEqualTo("Count aloud.");
        assertThat(seen.logged().orElseThrow().entry().outcome()).isEqualTo(Outcome.DONE);
        assertThat(seen.toString()).doesNotContain(WORDS).doesNotContain("Somebody");
        assertThat(week.days(parent, child, TODAY, 1).toString()).contains(WORDS);
    }

    @Test
    void aHelperTakesBackItsOwnTickAndNobodyElses() {
        week.log(parent, child, entry(""));
        assertThatThrownBy(() -> week.takeBack(helper, child, "bridge", TODAY)).isInstanceOf(NotAvailable.class);
        assertThat(week.entries(parent, child, TODAY, TODAY)).hasSize(1);

        week.log(helper, child, entry(""));
        week.takeBack(helper, child, "bridge", TODAY);
        assertThat(week.entries(parent, child, TODAY, TODAY)).isEmpty();
    }

    @Test
    void aHelperAfterTheEndGetsTheAnswerOfAChildThatDoesNotExist() {
        helpers.end(People.with(Role.COORDINATOR), child, helper.account(), 1);

        for (var about : List.of(child, ChildId.random())) {
            assertThatThrownBy(() -> week.days(helper, about, TODAY, 1))
                    .isInstanceOf(NotAvailable.class)
                    .hasMessage("not available");
            assertThatThrownBy(() -> week.log(helper, about, entry("")))
                    .isInstanceOf(NotAvailable.class)
                    .hasMessage("not available");
        }
    }

    @Test
    void aNoteForTheTeamAloneIsNotShownToTheOtherCaregiver() {
        var other = Children.caregiver(households, child, Reach.FULL);
        signs.report(parent, child, new Signs.ReportData(UUID.randomUUID(), List.of(), false, WORDS, true));
        signs.report(parent, child, new Signs.ReportData(UUID.randomUUID(), List.of(), false, "Open to all", false));

        assertThat(signs.of(other, child)).extracting(Signs.Report::note).containsExactly("Open to all");
        assertThat(signs.of(parent, child)).extracting(Signs.Report::note).contains(WORDS);
        assertThat(signs.of(People.with(Role.NURSE), child)).anySatisfy(note -> {
            assertThat(note.note()).isEqualTo(WORDS);
            assertThat(note.teamOnly()).isTrue();
        });
        var both = People.as(other.account(), Role.CAREGIVER, Role.NURSE);
        assertThat(signs.of(both, child)).extracting(Signs.Report::note).doesNotContain(WORDS);
        assertThatThrownBy(() -> signs.of(helper, child)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void aSignIsNeverKeptFromTheOtherCaregiver() {
        assertThat(new Signs.ReportData(UUID.randomUUID(), List.of("a sign"), true, "", true).teamOnly())
                .isFalse();
    }
}
