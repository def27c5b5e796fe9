package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

import com.vaadin.flow.dom.Element;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Change;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Signs;
import org.hearthway.task.Assignee;
import org.hearthway.task.Tasks;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.OnPath;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;

/** What stands on the family's path, at Thursday, March 12, 2026. */
@HearthwayTest
class PathPageTests {

    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final Viewer.Person COORDINATOR = People.with(Role.COORDINATOR);

    @Autowired
    private Readers readers;

    @Autowired
    private FamilyPlans familyPlans;

    @Autowired
    private PathNews.Source news;

    @Autowired
    private StageNeeds needs;

    @Autowired
    private ClinicSettings clinic;

    @Autowired
    private Plans plans;

    @Autowired
    private Visits visits;

    @Autowired
    private Tasks tasks;

    @Autowired
    private Accounts accounts;

    @Autowired
    private SignOff signOff;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Signs signs;

    @Autowired
    private CallLines lines;

    @Autowired
    private SettableClock clock;

    @Autowired
    private Words words;

    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWhoseFamilyMayReadThePaths() {
        OnPath.accept(signOff, plans, "sdr", "itb", "rehab", "followup");
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Reach.FULL);
    }

    private void onPath(String path, LocalDate begun) {
        new OnPath(plans, child).begin(path, Beginning.BESIDE, begun);
    }

    private void decide(String path, Change change) {
        new OnPath(plans, child).decide(path, change);
    }

    private Element page() {
        var nothing = new StaticListableBeanFactory().getBeanProvider(AlongsideSection.class);
        var page = new PathView(readers, familyPlans, news, needs, new Alongside(nothing), clinic);
        page.draw(reader());
        return page.getElement();
    }

    private Reader reader() {
        return new Reader(parent, register.get(parent, child), clock.instant(), words);
    }

    private static Stream<Element> all(Element root) {
        return Stream.concat(
                Stream.of(root), root.getChildren().filter(e -> !e.isTextNode()).flatMap(PathPageTests::all));
    }

    private static List<String> texts(Element root, String styleClass) {
        return all(root)
                .filter(element -> element.getClassList().contains(styleClass))
                .map(Element::getTextRecursively)
                .toList();
    }

    private void afterTheOperation() {
        onPath("sdr", LocalDate.of(2025, 9, 8));
        decide("sdr", new Change.Fix("operation", LocalDate.of(2026, 2, 10)));
    }

    @Test
    void namesTheRulesOfCareThatHoldWithTheirLastDayOnly() {
        afterTheOperation();
        assertThat(texts(page(), "hw-mind"))
                .singleElement()
                .asString()
                .contains("until Tuesday, March 24", "Do not twist the back")
                // four weeks after the operation it was free again
                .doesNotContain("No swimming yet");
    }

    @Test
    void isAListWhosePresentStageIsMarkedAndWhoseNextAloneTellsWhatHappens() {
        afterTheOperation();
        var page = page();
        assertThat(all(page).filter(e -> "step".equals(e.getAttribute("aria-current"))))
                .singleElement()
                .satisfies(now -> assertThat(now.getTextRecursively()).startsWith("Now: First weeks at home"));
        assertThat(page.getTextRecursively())
                .contains("Then the team says which moves are free again.")
                .doesNotContain("Legs get stronger step by step.");
    }

    @Test
    void tellsOfABookedTimeThatItIsFromBeforeAChange() {
        onPath("sdr", LocalDate.of(2025, 11, 10));
        decide("sdr", new Change.Fix("operation", LocalDate.of(2026, 4, 14)));
        visits.book(
                COORDINATOR,
                child,
                new Visits.Booking(
                        "operation",
                        LocalDateTime.of(2026, 4, 14, 8, 0),
                        240,
                        "",
                        Optional.of("sdr/operation/surgery")));
        assertThat(page().getTextRecursively())
                .contains("Tuesday, April 14, 8:00 AM")
                .doesNotContain("from before the change");
        decide("sdr", new Change.Fix("operation", LocalDate.of(2026, 5, 12)));
        assertThat(page().getTextRecursively()).contains("This time is from before the change.");
    }

    @Test
    void tellsTheBookedDayOfAStageOfADayWhileItFits() {
        afterTheOperation();
        visits.book(
                COORDINATOR,
                child,
                new Visits.Booking(
                        "six-week-check",
                        LocalDateTime.of(2026, 3, 26, 10, 30),
                        60,
                        "",
                        Optional.of("sdr/six-week-check/check")));
        assertThat(texts(page(), "win")).contains("on Thursday, March 26");
        decide("sdr", new Change.SetByHand("six-week-check", LocalDate.of(2026, 3, 30)));
        assertThat(texts(page(), "win"))
                .anyMatch(words -> words.startsWith("on Monday, March 30"))
                .noneMatch(words -> words.startsWith("on Thursday, March 26"));
    }

    @Test
    void asksWhatTheTeamGaveForTheStageInWordsOfItsOwn() {
        afterTheOperation();
        var account = accounts.invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount(
                                "Pat Somebody",
                                People.freshEmail(),
                                "",
                                Set.of(Role.CAREGIVER),
                                Language.EN,
                                People.ZONE))
                .account();
        households.link(People.with(Role.ADMINISTRATOR), child, account, Reach.FULL);
        tasks.give(
                COORDINATOR,
                child,
                new Tasks.Asked(
                        new Assignee.Family(),
                        "Fetch the blue splint.",
                        "",
                        LocalDate.of(2026, 3, 17),
                        Optional.of("sdr/home-weeks")));
        assertThat(all(page()).filter(e -> "checkbox".equals(e.getAttribute("role"))))
                .extracting(tick -> tick.getAttribute("aria-label"))
                .contains("Fetch the blue splint.");
        assertThat(page().getTextRecursively()).contains("by Tuesday, March 17");
    }

    @Test
    void tellsAVisitThatComesAgainOnce() {
        onPath("followup", LocalDate.of(2025, 8, 4));
        clock.advance(Duration.ofDays(30));
        assertThat(texts(page(), "hw-need").stream().filter(part -> part.contains("Brace fitting")))
                .singleElement()
                .satisfies(part -> assertThat(part.split("Brace fitting", -1)).hasSize(2));
    }

    @Test
    void drawsEachOfSeveralPathsUnderItsName() {
        onPath("itb", LocalDate.of(2024, 5, 6));
        onPath("rehab", LocalDate.of(2026, 3, 9));
        assertThat(texts(page(), "hw-path"))
                .hasSize(2)
                .anyMatch(way -> way.startsWith("Medicine pump (ITB)"))
                .anyMatch(way -> way.startsWith("Intensive rehab block"));
    }

    @Test
    void signsNameTheNumberToCallForPaperWhereNothingCanBePressed() {
        var on = new OnPath(plans, child);
        on.begin("sdr", Beginning.BESIDE, LocalDate.of(2026, 3, 9));
        var accepted = mock(Signs.class);
        given(accepted.all()).willReturn(List.of(signs.find("hip-less").orElseThrow()));
        var drawn = new StageCare(accepted, lines)
                .signs(reader(), on.plan("sdr").stage("referral").orElseThrow())
                .orElseThrow();
        assertThat(texts(drawn.getElement(), "hw-number-on-paper"))
                .singleElement()
                .asString()
                .containsPattern("\\d{3}");
    }

    @Test
    void whatWasDoneBeforeStandsBehindUsWithItsDayWhereItIsKnown() {
        var start = new Plans.Start(
                "sdr",
                Beginning.INSTEAD,
                Optional.of("home-weeks"),
                LocalDate.of(2026, 3, 9),
                Map.of("operation", LocalDate.of(2026, 2, 16)));
        plans.begin(PHYSICIAN, child, start, "operated on elsewhere", 0);
        var behind = texts(page(), "hw-behind").get(0);
        assertThat(behind).contains("First visitdone before", "Surgery").doesNotContain("Surgerydone before");
        assertThat(behind).containsPattern("Surgery.*Feb(ruary)? 16");
        // eight stages of which no day is known, and the operation
        assertThat(texts(page(), "hw-fold").get(0)).contains("9 stones behind us");
    }
}
