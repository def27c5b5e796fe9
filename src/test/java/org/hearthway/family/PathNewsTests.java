package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Plan;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.OnPath;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A child six weeks after its operation; its family was here eight days ago, the clinic's today is March 12, 2026. */
@HearthwayTest
class PathNewsTests {

    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);

    @Autowired
    private PathNews.Source source;

    @Autowired
    private FamilyPlans familyPlans;

    @Autowired
    private LastSeen lastSeen;

    @Autowired
    private Plans plans;

    @Autowired
    private SignOff signOff;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private SettableClock clock;

    @Autowired
    private Words words;

    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWithAnOperationDay() {
        OnPath.accept(signOff, plans, "sdr", "itb");
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Reach.FULL);
        new OnPath(plans, child).begin("sdr", Plans.Beginning.INSTEAD, LocalDate.of(2025, 11, 10));
        decide(new Change.Fix("operation", LocalDate.of(2026, 4, 14)));
        lastSeen.open(reader());
        clock.advance(Duration.ofDays(8));
    }

    private void decide(Change change) {
        var on = new OnPath(plans, child);
        on.decide(on.all().get(0).template().id(), change);
    }

    private Reader reader() {
        return new Reader(parent, register.get(parent, child), clock.instant(), words);
    }

    private Plan plan() {
        return familyPlans.plans(reader()).get(0);
    }

    private Optional<String> was(String stage) {
        return source.of(reader()).was(plan(), plan().stage(stage).orElseThrow());
    }

    private List<String> struck() {
        var news = source.of(reader());
        return plan().stages().stream()
                .filter(stage -> news.was(plan(), stage).isPresent())
                .map(Plan.Planned::point)
                .toList();
    }

    @Test
    void strikesNothingWhileNothingWasDecided() {
        assertThat(struck()).isEmpty();
        assertThat(source.of(reader()).gone(plan())).isEmpty();
    }

    @Test
    void strikesTheOldDayOfEveryStageThatMovedNotOnlyOfTheOneDecidedOn() {
        decide(new Change.Fix("operation", LocalDate.of(2026, 5, 12)));
        assertThat(was("operation")).contains("on Tuesday, April 14");
        assertThat(was("six-week-check")).contains("between May 19 and June 2");
        assertThat(struck())
                .contains("hospital", "home-weeks", "three-month-review")
                .doesNotContain("referral");
    }

    @Test
    void strikesNothingOfWhatWasTakenBack() {
        decide(new Change.Fix("operation", LocalDate.of(2026, 5, 12)));
        plans.undo(PHYSICIAN, child, 3, "a mistake", 3);
        assertThat(struck()).isEmpty();
    }

    @Test
    void tellsTheDayOfBeforeAndNotOneThatTheFamilyNeverSaw() {
        decide(new Change.Fix("operation", LocalDate.of(2026, 4, 28)));
        decide(new Change.Fix("operation", LocalDate.of(2026, 5, 12)));
        assertThat(was("operation")).contains("on Tuesday, April 14");
    }

    @Test
    void strikesAWeekLongAndThenAsLongAsThePersonWasNotHere() {
        decide(new Change.Fix("operation", LocalDate.of(2026, 5, 12)));
        lastSeen.open(reader());
        clock.advance(Duration.ofDays(6));
        lastSeen.open(reader());
        assertThat(was("operation")).isPresent();
        clock.advance(Duration.ofDays(2));
        assertThat(was("operation")).isEmpty();

        decide(new Change.Fix("operation", LocalDate.of(2026, 5, 19)));
        clock.advance(Duration.ofDays(30));
        assertThat(was("operation")).contains("on Tuesday, May 12");
    }

    @Test
    void strikesNothingOfAPathThatIsNewAsAWholeUntilThePersonHasSeenIt() {
        plans.begin(PHYSICIAN, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2026, 3, 9), "another way");
        decide(new Change.SetByHand("assessment", LocalDate.of(2026, 4, 20)));
        assertThat(struck()).isEmpty();
        clock.advance(Duration.ofDays(1));
        lastSeen.open(reader());
        clock.advance(Duration.ofDays(1));
        decide(new Change.SetByHand("assessment", LocalDate.of(2026, 4, 27)));
        assertThat(was("assessment")).contains("on Monday, April 20");
    }

    @Test
    void tellsWhatLeftThePathAndWhatIsNewOnIt() {
        decide(new Change.Skip("funding"));
        assertThat(source.of(reader()).gone(plan())).containsExactly("Who pays");
        decide(new Change.Add("funding"));
        assertThat(source.of(reader()).gone(plan())).isEmpty();
        lastSeen.open(reader());
        decide(new Change.Skip("funding"));
        clock.advance(Duration.ofDays(20));
        lastSeen.open(reader());
        clock.advance(Duration.ofDays(1));
        decide(new Change.Add("funding"));
        var news = source.of(reader());
        assertThat(plan().stages())
                .filteredOn(stage -> news.isNew(plan(), stage))
                .extracting(Plan.Planned::point)
                .containsExactly("funding");
    }
}
