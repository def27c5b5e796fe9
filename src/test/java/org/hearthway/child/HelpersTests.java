package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.LocalDate;
import java.time.LocalTime;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.engine.Nights;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class HelpersTests {

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Homes homes;

    @Autowired
    private Helpers helpers;

    @Autowired
    private SettableClock clock;

    private static Help until(LocalDate day, AccountId consent) {
        return new Help(Kind.SCHOOL_AIDE, day, new Consent(consent, TODAY));
    }

    private static void isRefused(Runnable act, String... fields) {
        assertThatThrownBy(act::run)
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::field)
                                .containsExactly(fields));
    }

    @Test
    void accessIsGoneWithTheDayAndTheAnswerIsThatOfAChildThatDoesNotExist() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL);
        var helper = People.with(Role.HELPER);
        helpers.link(DESK, child, helper.account(), until(TODAY.plusDays(2), parent.account()), 0);

        clock.set(TODAY.plusDays(2)
                .atTime(LocalTime.of(23, 59))
                .atZone(People.ZONE)
                .toInstant());
        assertThat(helpers.glimpse(helper, child)).isEqualTo(new Helpers.Glimpse(child, "Wren", 2));

        clock.set(TODAY.plusDays(3).atStartOfDay(People.ZONE).toInstant());
        var gone = catchThrowable(() -> helpers.glimpse(helper, child));
        var nobodys = catchThrowable(() -> helpers.glimpse(helper, ChildId.random()));
        assertThat(gone).isInstanceOf(NotAvailable.class).hasMessage(nobodys.getMessage());
        assertThat(helpers.mine(helper)).isEmpty();
        assertThat(helpers.of(parent, child))
                .singleElement()
                .satisfies(ended -> assertThat(ended.over()).isTrue());
    }

    @Test
    void accessIsGoneAtOnceWhenItIsEndedByHandAndComesBackOnlyByANewWord() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL);
        var helper = People.with(Role.HELPER);
        helpers.link(parent, child, helper.account(), until(TODAY.plusDays(30), parent.account()), 0);
        assertThatThrownBy(() -> helpers.end(parent, child, helper.account(), 0))
                .isInstanceOf(Overtaken.class);

        helpers.end(parent, child, helper.account(), 1);
        assertThatThrownBy(() -> helpers.glimpse(helper, child)).isInstanceOf(NotAvailable.class);

        helpers.link(parent, child, helper.account(), until(TODAY.plusDays(30), parent.account()), 2);
        assertThat(helpers.mine(helper)).hasSize(1);
    }

    @Test
    void refusesADayBehindAndADayBeyondAYear() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL).account();
        var who = AccountId.random();

        isRefused(() -> helpers.link(DESK, child, who, until(TODAY.minusDays(1), parent), 0), "lastDay");
        isRefused(() -> helpers.link(DESK, child, who, until(TODAY.plusYears(1).plusDays(1), parent), 0), "lastDay");
        helpers.link(DESK, child, who, until(TODAY, parent), 0);
    }

    @Test
    void refusesAConsentOfSomebodyWhoMayNotGiveIt() {
        var child = Children.enter(register);
        var looksOn = Children.caregiver(households, child, Reach.VIEW_ONLY).account();
        var lacks = Children.caregiver(households, child, Reach.FULL).account();
        var who = AccountId.random();
        homes.enter(DESK, child, lacks, new Home("father", Authority.NO, "", "", Nights.NONE, false, false, ""), 0);

        isRefused(() -> helpers.link(DESK, child, who, until(TODAY, looksOn), 0), "consentBy");
        isRefused(() -> helpers.link(DESK, child, who, until(TODAY, lacks), 0), "consentBy");
        isRefused(() -> helpers.link(DESK, child, who, until(TODAY, AccountId.random()), 0), "consentBy");
    }

    @Test
    void aCaregiverSaysYesForItselfAlone() {
        var child = Children.enter(register);
        var one = Children.caregiver(households, child, Reach.FULL);
        var other = Children.caregiver(households, child, Reach.FULL);

        isRefused(() -> helpers.link(one, child, AccountId.random(), until(TODAY, other.account()), 0), "consentBy");
    }

    @Test
    void nobodyButTheFamilyAndTheOfficeLetsAHelperIn() {
        var child = Children.enter(register);
        var parent = Children.caregiver(households, child, Reach.FULL).account();
        var looksOn = Children.caregiver(households, child, Reach.VIEW_ONLY);

        for (var viewer : java.util.List.of(looksOn, People.with(Role.NURSE), People.with(Role.HELPER))) {
            assertThatThrownBy(() -> helpers.link(viewer, child, AccountId.random(), until(TODAY, parent), 0))
                    .isInstanceOf(NotAvailable.class);
        }
    }
}
