package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.access.Accounts;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Again;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.Medicines.MedicineData;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.Tapers.After;
import org.hearthway.medicine.Tapers.TaperData;
import org.hearthway.medicine.engine.TaperCalendar.Step;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.Team;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What goes on alongside the path, as the family sees it on Thursday, March 12, 2026. */
@HearthwayTest
class AlongsideTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private MedicineSection section;

    @Autowired
    private Medicines medicines;

    @Autowired
    private Tapers tapers;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Standings standings;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private Words words;

    private Viewer nurse = People.with(Role.NURSE);
    private Viewer physician = People.with(Role.PHYSICIAN);

    private ChildId child = ChildId.random();
    private MedicineId medicine = MedicineId.random();
    private Viewer.Person parent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aMedicineWithACalendar() {
        nurse = Team.member(accounts, passwords, "Nell Harker", Role.NURSE);
        physician = Team.member(accounts, passwords, "Ondine Farrow", Role.PHYSICIAN);
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Reach.FULL);
        medicine = medicines.enter(nurse, child, data("10 mg at night")).id();
    }

    private static MedicineData data(String dose) {
        return new MedicineData(
                "Gabapentin",
                "",
                How.MOUTH,
                dose,
                Optional.empty(),
                "pain",
                "",
                TODAY.minusDays(30),
                "Dr. Nwosu",
                Optional.empty());
    }

    private void check() {
        medicines.confirm(
                physician, child, medicine, new Again("10 mg at night", Optional.empty(), Optional.empty()), 1);
    }

    private void taper() {
        var data = new TaperData(
                List.of(
                        new Step(TODAY.minusDays(5), "7.5 mg at night"),
                        new Step(TODAY, "5 mg at night"),
                        new Step(TODAY.plusDays(5), "2.5 mg at night")),
                Optional.of(After.STOP),
                Optional.of(TODAY.plusDays(10)));
        tapers.sign(physician, child, medicine, data, 0);
        tapers.confirm(nurse, child, medicine, data, 1);
    }

    private Element page() {
        var reader = new Reader(parent, register.get(parent, child), HearthwayTest.START, words);
        return section.draw(reader).orElseThrow().getElement();
    }

    private static Stream<Element> all(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(AlongsideTests::all));
    }

    private static List<String> today(Element page) {
        return all(page)
                .filter(element -> !element.isTextNode() && element.hasAttribute("aria-current"))
                .map(Element::getTextRecursively)
                .toList();
    }

    @Test
    void showsNoDoseBeforeItsSecondCheckAndSaysToAskFirst() {
        assertThat(page().getTextRecursively())
                .contains(words.say(parent.language(), "family.medicine.writing"))
                .doesNotContain("10 mg");
        check();
        assertThat(page().getTextRecursively())
                .contains("10 mg at night")
                .doesNotContain(words.say(parent.language(), "family.medicine.writing"));
        medicines.change(nurse, child, medicine, data("20 mg at night"), 1);
        assertThat(page().getTextRecursively())
                .contains("10 mg at night", words.say(parent.language(), "family.medicine.writing"))
                .doesNotContain("20 mg");
    }

    @Test
    void marksTodaysRowAndAlwaysWarnsOfASuddenStop() {
        check();
        taper();
        assertThat(today(page()))
                .singleElement()
                .asString()
                .contains("5 mg at night")
                .doesNotContain("7.5");
        assertThat(page().getTextRecursively())
                .contains(words.say(parent.language(), "family.medicine.sudden"))
                .as("once the calendar runs, the old dose is not there to be taken for today’s")
                .doesNotContain("10 mg");
    }

    @Test
    void marksNoRowWhileNothingIsAskedOfTheFamily() {
        check();
        taper();
        standings.say(physician, child, new Standings.Saying(Status.AWAY, "In hospital", Optional.empty()), 0);
        assertThat(today(page())).isEmpty();
        assertThat(page().getTextRecursively()).contains("5 mg at night");
    }
}
