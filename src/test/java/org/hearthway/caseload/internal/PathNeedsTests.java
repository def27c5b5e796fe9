package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.desk.Board;
import org.hearthway.desk.Desk;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.OnPath;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** From the shipped surgery path to the list, the desk and back, on Thursday, March 12, 2026. */
@HearthwayTest
class PathNeedsTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person SURGEON = People.with(Role.PHYSICIAN);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    @Autowired
    private Plans plans;

    @Autowired
    private Needs needs;

    @Autowired
    private NeedsWatch watch;

    @Autowired
    private Desk desk;

    @Autowired
    private Visits visits;

    @Autowired
    private Standings standings;

    @Autowired
    private ChildRegister register;

    @Autowired
    private SettableClock clock;

    private ChildId child = ChildId.random();

    @BeforeEach
    void aChild() {
        child = Children.enter(register);
    }

    private void begin(LocalDate day) {
        new OnPath(plans, child).begin("sdr", Plans.Beginning.INSTEAD, day);
    }

    private void change(Change change) {
        new OnPath(plans, child).decide("sdr", change);
    }

    private List<Needs.Item> items() {
        return needs.open(SURGEON).stream()
                .filter(item ->
                        item.child().equals(child) && item.cause().rule().isOfPath())
                .toList();
    }

    private List<Board.Row> toBook() {
        return desk.board(DESK).in(Board.Group.TO_BOOK).stream()
                .filter(row -> row.child().equals(child)
                        && row.wanted().orElseThrow().purpose().startsWith("sdr/"))
                .toList();
    }

    /** Approved and with a day for the operation in twelve days; nobody has said that the consent was signed. */
    private void dated() {
        begin(TODAY.minusWeeks(30));
        change(new Change.Fix("getting-ready", TODAY.minusWeeks(8)));
        change(new Change.End("funding", "approved", TODAY.minusWeeks(4)));
        change(new Change.Fix("consent", TODAY.minusWeeks(1)));
        change(new Change.Fix("operation", TODAY.plusDays(12)));
    }

    @Test
    void aConsentWithoutAnAnswerStandsOnTheListUntilThePathSaysIt() {
        dated();
        assertThat(items())
                .filteredOn(item -> item.cause().rule() == Rule.STAGE_WAITS)
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.cause().subject()).isEqualTo("sdr/consent/operation");
                    assertThat(item.cause().day()).isEqualTo(TODAY.plusDays(12));
                    assertThat(needs.conduct(item).outcomeCloses()).isFalse();
                    assertThatThrownBy(() -> needs.close(
                                    SURGEON, item.id(), Needs.Outcome.SPOKE, "they will sign", item.version()))
                            .isInstanceOf(Invalid.class);
                    needs.setAside(SURGEON, item.id(), TODAY.plusDays(3), "they sign on Sunday", item.version());
                });

        change(new Change.End("consent", "signed", TODAY));

        assertThat(items()).extracting(item -> item.cause().rule()).doesNotContain(Rule.STAGE_WAITS);
        assertThat(needs.left(SURGEON, HearthwayTest.START))
                .filteredOn(
                        item -> item.child().equals(child) && item.cause().day().equals(TODAY.plusDays(12)))
                .singleElement()
                .satisfies(item -> assertThat(item.left().orElseThrow().gone()).contains(Gone.PATH_CHANGED));
    }

    @Test
    void aVisitOfThePathIsToBookSoonestFirstAndOnTheListUntilItIsBooked() {
        dated();
        var wanted = toBook().stream().map(row -> row.wanted().orElseThrow()).toList();
        assertThat(wanted).extracting(Board.Wanted::until).isSorted();
        assertThat(wanted)
                .filteredOn(one -> one.purpose().equals("sdr/operation/sleep-doctor"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.from()).isEqualTo(TODAY.minusDays(2));
                    assertThat(one.until()).isEqualTo(TODAY.plusDays(9));
                });
        assertThat(missing()).contains("sdr/operation/sleep-doctor");

        visits.book(
                DESK,
                child,
                new Visits.Booking(
                        "pre-anaesthetic",
                        TODAY.plusDays(4).atTime(9, 0),
                        30,
                        "",
                        Optional.of("sdr/operation/sleep-doctor")));

        assertThat(missing()).doesNotContain("sdr/operation/sleep-doctor");
        assertThat(toBook()).noneMatch(row -> row.id().endsWith("/sdr/operation/sleep-doctor"));
        assertThat(needs.left(SURGEON, HearthwayTest.START))
                .filteredOn(item ->
                        item.child().equals(child) && item.cause().subject().equals("sdr/operation/sleep-doctor"))
                .singleElement()
                .satisfies(item -> assertThat(item.left().orElseThrow().gone()).contains(Gone.VISIT_BOOKED));
    }

    private List<String> missing() {
        return items().stream()
                .filter(item -> item.cause().rule() == Rule.STAGE_VISIT)
                .map(item -> item.cause().subject())
                .toList();
    }

    @Test
    void aVisitThatWasClosedWithAnOutcomeDoesNotComeBack() {
        dated();
        var item = items().stream()
                .filter(one -> one.cause().subject().equals("sdr/operation/sleep-doctor"))
                .findFirst()
                .orElseThrow();
        needs.close(SURGEON, item.id(), Needs.Outcome.HANDED_ON, "seen at the county hospital", item.version());
        clock.advance(Duration.ofDays(2));
        watch.look(child);
        assertThat(missing()).doesNotContain("sdr/operation/sleep-doctor");
    }

    @Test
    void anOperationThatNobodyDatedIsLateOnTheDayAfterItsLastDay() {
        begin(TODAY.minusWeeks(60));
        change(new Change.Fix("getting-ready", TODAY.minusWeeks(24)));
        change(new Change.End("funding", "approved", TODAY.minusWeeks(20)));
        change(new Change.End("consent", "signed", TODAY.minusWeeks(19)));
        var latest = plans.plans(SURGEON, child)
                .get(0)
                .plan()
                .stage("operation")
                .orElseThrow()
                .latest()
                .orElseThrow();
        assertThat(latest).as("still ahead").isAfter(TODAY);
        assertThat(late()).isEmpty();

        clock.advance(Duration.ofDays(ChronoUnit.DAYS.between(TODAY, latest)));
        watch.look(child);
        assertThat(late()).as("the day itself").isEmpty();

        clock.advance(Duration.ofDays(1));
        watch.look(child);
        assertThat(late()).containsExactly("sdr/operation");
    }

    private List<String> late() {
        return items().stream()
                .filter(item -> item.cause().rule() == Rule.STAGE_LATE)
                .map(item -> item.cause().subject())
                .toList();
    }

    @Test
    void nothingIsSaidWhileTheChildIsInHospitalAndAllOfItAfterwards() {
        dated();
        var before = items();
        assertThat(before).isNotEmpty();
        standings.say(SURGEON, child, new Standings.Saying(Status.AWAY, "in hospital", Optional.empty()), 0);
        assertThat(items()).isEmpty();
        change(new Change.End("consent", "signed", TODAY));
        clock.advance(Duration.ofHours(1));
        standings.say(SURGEON, child, new Standings.Saying(Status.ACTIVE, "home again", Optional.empty()), 1);
        assertThat(needs.left(SURGEON, clock.instant()))
                .as("what stood still leaves now")
                .filteredOn(item -> item.child().equals(child))
                .extracting(item -> item.cause().rule())
                .containsExactly(Rule.STAGE_WAITS);
        assertThat(items())
                .isNotEmpty()
                .isEqualTo(before.stream()
                        .filter(item -> item.cause().rule() != Rule.STAGE_WAITS)
                        .toList());
    }

    @Test
    void aPathThatIsOverAsksForNothing() {
        dated();
        change(new Change.End("getting-ready", "called-off", TODAY));
        assertThat(items()).isEmpty();
        assertThat(toBook()).isEmpty();
    }

    @Test
    void ofTwoPathsAtOnceEachTellsItsOwn() {
        dated();
        var before = items();
        plans.begin(
                SURGEON, child, "rehab", Plans.Beginning.BESIDE, TODAY.minusWeeks(6), "the school asked for a block");
        assertThat(items()).containsAll(before);
        assertThat(items())
                .filteredOn(item -> item.cause().subject().startsWith("rehab/"))
                .isNotEmpty();
    }

    @Test
    void aStageTakenOffThePlanAsksForNothing() {
        dated();
        change(new Change.Skip("consent"));
        assertThat(items())
                .extracting(item -> item.cause().subject())
                .noneMatch(subject -> subject.contains("consent"));
    }
}
