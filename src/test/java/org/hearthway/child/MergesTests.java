package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.engine.Nights;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.Pumps;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What must agree before two entries become one. */
@HearthwayTest
class MergesTests {

    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    @Autowired
    private Merges merges;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Homes homes;

    @Autowired
    private Standings standings;

    @Autowired
    private Safeguarding safeguarding;

    @Autowired
    private Pumps pumps;

    @Autowired
    private PumpBook book;

    @Autowired
    private Accounts accounts;

    @Autowired
    private AuditTrail trail;

    private ChildId stays;
    private ChildId folds;

    @BeforeEach
    void enter() {
        stays = Children.enter(register);
        folds = Children.enter(register);
    }

    private void merge() {
        merges.merge(ADMINISTRATOR, stays, merges.preview(ADMINISTRATOR, stays, folds), "Entered twice");
    }

    private void isHindered(String key) {
        assertThat(merges.preview(ADMINISTRATOR, stays, folds).hindrances())
                .extracting(Problem::key)
                .contains(key);
        assertThatThrownBy(this::merge).isInstanceOf(Invalid.class).hasMessageContaining(key);
        assertThat(register.all(ADMINISTRATOR)).extracting(Child::id).contains(stays, folds);
    }

    @Test
    void leavesALineInTheTrailOfWhoDidIt() {
        merge();

        assertThat(trail.newest(ADMINISTRATOR, 1)).singleElement().satisfies(line -> {
            assertThat(line.what()).isEqualTo("changed: ChildrenMerged");
            assertThat(line.actor()).isEqualTo(ADMINISTRATOR.tag());
            assertThat(line.child()).contains(stays);
        });
    }

    @Test
    void refusesTheSameEntryTwice() {
        folds = stays;

        isHindered("child.problem.merge.same");
    }

    @Test
    void refusesTwoBirthDates() {
        var data = Children.data();
        register.change(
                ADMINISTRATOR,
                folds,
                ChildData.plain(data.names(), data.birthDate().plusDays(1), Optional.of(3), 2),
                1);

        isHindered("child.problem.merge.birth-date");
    }

    @Test
    void refusesTwoStatuses() {
        standings.say(NURSE, folds, new Standings.Saying(Status.AWAY, "In hospital", Optional.empty()), 0);

        isHindered("child.problem.merge.status");
    }

    @Test
    void refusesADeathThatWaitsForASecondPerson() {
        var died = new Standings.Saying(Status.DIED, "The hospital called", Optional.empty());
        standings.say(NURSE, stays, died, 0);
        standings.say(NURSE, folds, died, 0);

        isHindered("child.problem.merge.status");
    }

    @Test
    void givesNobodyARightOnTheWay() {
        var parent = Children.caregiver(households, stays, Reach.FULL);
        households.link(ADMINISTRATOR, folds, parent.account(), Reach.VIEW_ONLY);

        isHindered("child.problem.merge.reach");
    }

    @Test
    void keepsApartWhoIsToBeKeptApart() {
        var parent = Children.caregiver(households, stays, Reach.FULL).account();
        households.link(ADMINISTRATOR, folds, parent, Reach.FULL);
        homes.enter(DESK, stays, parent, home(false), 0);
        homes.enter(DESK, folds, parent, home(true), 0);

        isHindered("child.problem.merge.apart");
    }

    private static Home home(boolean apart) {
        return new Home("mother", Authority.YES, "", "", Nights.NONE, false, apart, "");
    }

    @Test
    void letsNoOlderAlarmDateTakeThePlaceOfANewerOne() {
        fill(stays, TODAY.minusDays(60));
        fill(folds, TODAY.minusDays(1));

        isHindered("child.problem.merge.newer.pump-entry");
        var other = merges.preview(ADMINISTRATOR, folds, stays);
        assertThat(other.hindrances()).isEmpty();
        merges.merge(ADMINISTRATOR, folds, other, "Entered twice");
        assertThat(pumps.refill(NURSE, folds).orElseThrow().filled()).isEqualTo(TODAY.minusDays(1));
    }

    private void fill(ChildId child, LocalDate filled) {
        PumpBooks.refilled(
                book,
                Team.colleague(accounts, "Iris Vale", Role.NURSE),
                Team.colleague(accounts, "Dr. Otto Brand", Role.PHYSICIAN),
                child,
                filled,
                filled.plusDays(90));
    }

    @Test
    void isNothingForSomebodyWhoseOwnChildItIs() {
        var both = new Viewer.Person(
                AccountId.random(), "Both", Set.of(Role.ADMINISTRATOR, Role.CAREGIVER), Language.EN, People.ZONE);
        households.link(ADMINISTRATOR, folds, both.account(), Reach.FULL);

        assertThatThrownBy(() -> merges.preview(both, stays, folds)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void isOvertakenWhenSomethingCameBetweenLookingAndDoing() {
        var seen = merges.preview(ADMINISTRATOR, stays, folds);
        Children.caregiver(households, folds, Reach.FULL);

        assertThatThrownBy(() -> merges.merge(ADMINISTRATOR, stays, seen, "Entered twice"))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void asksForAReason() {
        var seen = merges.preview(ADMINISTRATOR, stays, folds);

        assertThatThrownBy(() -> merges.merge(ADMINISTRATOR, stays, seen, " x "))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .containsExactly(Problem.at("reason", "child.problem.merge.reason", 3, 500)));
    }

    @Test
    void isTakenBackOnce() {
        merge();
        var merge = merges.standing(ADMINISTRATOR).get(0).id();
        merges.takeBack(ADMINISTRATOR, stays, merge, "Two children after all");

        assertThatThrownBy(() -> merges.takeBack(ADMINISTRATOR, stays, merge, "Two children after all"))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void letsNoFlagGetLostAndTellsNobodyOfIt() {
        var named = People.with(Role.NURSE);
        safeguarding.name(ADMINISTRATOR, named.account(), true);
        safeguarding.say(named, stays, true, "An old worry", 0);
        safeguarding.say(named, stays, false, "Settled", 1);
        safeguarding.say(named, folds, true, "A worry that stands", 0);

        assertThat(merges.preview(ADMINISTRATOR, stays, folds).parts())
                .extracting(Merges.Part::name)
                .noneMatch(name -> name.contains("flag"));
        merge();

        assertThat(safeguarding.of(named, stays))
                .extracting(Safeguarding.Flag::words)
                .isEqualTo(List.of("A worry that stands", "Settled", "An old worry"));
        merges.takeBack(
                ADMINISTRATOR, stays, merges.standing(ADMINISTRATOR).get(0).id(), "Two children after all");
        assertThat(safeguarding.of(named, stays))
                .extracting(Safeguarding.Flag::words)
                .isEqualTo(List.of("Settled", "An old worry"));
        assertThat(safeguarding.of(named, folds))
                .extracting(Safeguarding.Flag::number)
                .isEqualTo(List.of(1L));
    }
}
