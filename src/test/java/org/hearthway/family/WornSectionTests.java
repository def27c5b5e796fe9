package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Names;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.content.Provenance;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.engine.Watched;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a family reads of casts, splints and checks. */
@HearthwayTest
class WornSectionTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);

    @Autowired
    private Casts casts;

    @Autowired
    private Equipment equipment;

    @Autowired
    private Surveillance surveillance;

    @Autowired
    private ChecksSection checks;

    @Autowired
    private Pause pauses;

    @Autowired
    private Standings standings;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Words words;

    private final Signs signs = mock(Signs.class);
    private ChildId child = ChildId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildWithAParent() {
        child = register.enter(
                People.with(Role.ADMINISTRATOR),
                ChildData.plain(Names.plain("Tamsin", "Orbell"), LocalDate.of(2024, 5, 4), Optional.of(4), 2));
        parent = Children.caregiver(households, child, Households.Reach.FULL);
        when(signs.all())
                .thenReturn(List.of(
                        sign("cast-blue-toes", Sign.Urgency.NOW, "Blue toes"),
                        sign("splint-skin", Sign.Urgency.HOURS, "Red skin"),
                        sign("bent-leg", Sign.Urgency.NOW, "Bent leg")));
    }

    private static Sign sign(String id, Sign.Urgency urgency, String says) {
        return new Sign(
                id,
                Sign.Topic.REHAB,
                urgency,
                Bilingual.same(says),
                new Provenance("common practice, no source", 1, Optional.empty(), Optional.empty()));
    }

    private String worn() {
        return told(new WornSection(casts, equipment, signs, pauses).draw(reader()));
    }

    private Reader reader() {
        return new Reader(parent, register.get(parent, child), HearthwayTest.START, words);
    }

    private static String told(Optional<Component> section) {
        return section.map(drawn -> texts(drawn.getElement()).collect(Collectors.joining("\n")))
                .orElse("");
    }

    private static Stream<String> texts(Element element) {
        return element.isTextNode()
                ? Stream.of(element.getText())
                : Stream.concat(
                        Stream.of(Optional.ofNullable(element.getAttribute("href"))
                                .orElse("")),
                        element.getChildren().flatMap(WornSectionTests::texts));
    }

    private void putOn() {
        casts.enter(
                NURSE,
                child,
                new CastSeries.Data(
                        Place.FOOT_ANKLE,
                        Place.Side.LEFT,
                        TODAY.minusDays(2),
                        7,
                        Optional.empty(),
                        Optional.empty(),
                        List.of(new CastSeries.Cast(
                                TODAY.minusDays(2), Optional.empty(), Optional.of(-5), "team only"))));
    }

    private void fit(String typed) {
        equipment.enter(
                NURSE,
                child,
                new Item.Data(
                        "night-splint",
                        Optional.of(Place.FOOT_ANKLE),
                        Optional.of(Place.Side.BOTH),
                        TODAY.minusDays(40),
                        Optional.empty(),
                        new Item.Wear(Optional.empty(), Optional.of(8), typed, typed),
                        Optional.of(28),
                        Optional.of(90),
                        Optional.empty(),
                        List.of()));
    }

    @Test
    void nothingIsShownWhereThereIsNothing() {
        assertThat(worn()).isEmpty();
    }

    @Test
    void aCastStandsBesideItsSignsAndTheWayToTheNumbers() {
        putOn();
        assertThat(worn())
                .contains("The next cast change is about March 17")
                .contains("Blue toes", "Call the emergency number now.", "Red skin", "Call the office.")
                .contains("my/" + child + "/call")
                .doesNotContain("Bent leg")
                .doesNotContain("team only");
        // an identifier may hold these characters by chance
        assertThat(worn().replace(child.toString(), "")).doesNotContain("-5");
    }

    @Test
    void aSplintSaysWhenToWearItAndWhenToLook() {
        fit("With thin socks");
        assertThat(worn())
                .contains("8 hours at night", "With thin socks", "Red skin")
                // the day has passed: it is asked for today, without a reproach
                .contains("Next day to look at the skin well: March 12")
                .doesNotContain("Blue toes");
    }

    @Test
    void whatWasTypedStaysText() {
        HostileStrings.all().forEach(typed -> {
            aChildWithAParent();
            fit(typed);
            var section = new WornSection(casts, equipment, signs, pauses).draw(reader());
            var lines = typed.strip()
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
            assertThat(told(section).lines().toList()).containsAll(lines);
            assertThat(section.orElseThrow().getElement().getOuterHTML()).doesNotContain("<script");
        });
    }

    @Test
    void nothingIsAskedWhileTheChildIsInHospital() {
        putOn();
        fit("With thin socks");
        record();
        standings.say(NURSE, child, new Standings.Saying(Status.AWAY, "in hospital", Optional.empty()), 0);
        assertThat(worn())
                .contains("With thin socks", "Blue toes")
                .doesNotContain("next cast change")
                .doesNotContain("Next day");
        assertThat(told(checks.draw(reader())))
                .contains("Last one: Nov 30, 2025")
                .doesNotContain("2026");
    }

    private void record() {
        surveillance.record(
                NURSE,
                child,
                new CheckData(
                        Watched.HIPS,
                        LocalDate.of(2025, 11, 30),
                        "Dr. Nwosu",
                        Optional.of(new BigDecimal("37")),
                        Optional.of(new BigDecimal("41")),
                        Optional.empty(),
                        false,
                        "team only"),
                0);
    }

    @Test
    void aCheckIsADayThatIsToBeConfirmedAndNoNumber() {
        record();
        assertThat(told(checks.draw(reader())))
                .contains("about May 30, 2026", "to be confirmed by your team", "Last one: Nov 30, 2025")
                .doesNotContain("37")
                .doesNotContain("41")
                .doesNotContain("team only");
    }
}
