package org.hearthway.medicine.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentKind;
import org.hearthway.content.ContentReading;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.PlaceData;
import org.hearthway.medicine.ToxinSessions.SessionData;
import org.hearthway.medicine.ToxinSessions.Side;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026; the shipped interval is 84 days, common practice, no source. */
@SpringJUnitConfig(CheckedMedicinesTests.Setting.class)
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_EACH_TEST_METHOD)
class RecordedSessionsTests {

    private static final LocalDate GIVEN = LocalDate.of(2026, 2, 2);
    private static final LocalDate NEXT = LocalDate.of(2026, 4, 27);

    @Autowired
    private ToxinSessions sessions;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Words words;

    private final Viewer nurse = People.with(Role.NURSE);
    private final Viewer physician = People.with(Role.PHYSICIAN);
    private final Viewer parent = People.with(Role.CAREGIVER);
    private final ChildId child = ChildId.random();

    @BeforeEach
    void readContent(@Autowired List<ContentKind> all) {
        all.forEach(ContentReading::shipped);
        gate.deny();
    }

    private static PlaceData place(String muscle, Side side, String units, String preparation) {
        return new PlaceData(Optional.of(muscle), Optional.of(side), Optional.of(new BigDecimal(units)), preparation);
    }

    private static SessionData given(PlaceData... places) {
        return new SessionData(State.GIVEN, GIVEN, Arrays.asList(places), "Dr. Nwosu", "", "");
    }

    private static SessionData planned(LocalDate day, String early) {
        return new SessionData(State.PLANNED, day, List.of(), "", "", early);
    }

    private List<Problem> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        refused.forEach(problem -> assertThat(words.say(Language.ES, problem)).doesNotContain("{"));
        return refused;
    }

    @Test
    void unitsOfTwoPreparationsAreNeverAddedUp() {
        var session = sessions.enter(
                nurse,
                child,
                given(
                        place("gastrocnemius", Side.LEFT, "50", "Vial Alder"),
                        place("gastrocnemius", Side.RIGHT, "40", "vial alder"),
                        place("soleus", Side.LEFT, "120", "Vial Birch")));
        assertThat(session.totals())
                .extracting(total -> total.amount() + " " + total.preparation().name())
                .containsExactly("90 Vial Alder", "120 Vial Birch");
        assertThat(sessions.all(nurse, child)).containsExactly(session);
    }

    @Test
    void unitsWithoutTheirPreparationAreRefusedWithTheFieldTheBoundAndTheWayOut() {
        var problems = refusal(() -> sessions.enter(
                nurse,
                child,
                given(place("soleus", Side.LEFT, "40", "Vial Alder"), place("soleus", Side.RIGHT, "40", " "))));
        assertThat(problems).extracting(Problem::field).containsExactly("preparation1");
        assertThat(words.say(Language.EN, problems.get(0)))
                .isEqualTo("Units count only together with their preparation. Write the name on the vial, at most 80"
                        + " characters.");
    }

    @Test
    void saysAllThatIsWrongAtOnce() {
        var nothing = new PlaceData(Optional.empty(), Optional.empty(), Optional.empty(), "");
        var odd = place("elbow of the moon", Side.LEFT, "2000.01", "Vial Alder");
        var data =
                new SessionData(State.GIVEN, LocalDate.of(2026, 3, 13), List.of(nothing, odd), "", "x".repeat(501), "");
        assertThat(refusal(() -> sessions.enter(nurse, child, data)))
                .extracting(Problem::field)
                .containsExactlyInAnyOrder(
                        "on", "muscle0", "side0", "units0", "preparation0", "muscle1", "units1", "givenBy", "note");
        assertThat(refusal(() -> sessions.enter(nurse, child, given())))
                .extracting(Problem::field)
                .containsExactly("places");
    }

    @Test
    void theNextOneIsNotBeforeTheClinicsInterval() {
        sessions.enter(nurse, child, given(place("soleus", Side.LEFT, "40", "Vial Alder")));
        assertThat(sessions.shown(parent, child).notBefore()).contains(NEXT);
        var problems = refusal(() -> sessions.enter(nurse, child, planned(NEXT.minusDays(1), "")));
        assertThat(problems).extracting(Problem::field).containsExactly("on");
        assertThat(words.say(Language.EN, problems.get(0))).contains("84 days", "Apr 27");
        sessions.enter(nurse, child, planned(NEXT, ""));
        assertThat(sessions.shown(parent, child).planned()).contains(NEXT);
    }

    @Test
    void onlyAPhysicianPlansEarlierAndSaysWhy() {
        sessions.enter(nurse, child, given(place("soleus", Side.LEFT, "40", "Vial Alder")));
        var early = planned(NEXT.minusDays(10), "Operation planned, last chance before it");
        gate.deny(Action.SIGN_MEDICINE);
        assertThat(refusal(() -> sessions.enter(nurse, child, early)))
                .extracting(Problem::field)
                .containsExactly("early");
        gate.deny();
        var session = sessions.enter(physician, child, early);
        assertThat(session.early()).isEqualTo("Operation planned, last chance before it");
    }

    @Test
    void theFamilySeesDayAndPlacesInItsOwnWords() {
        sessions.enter(
                nurse,
                child,
                given(
                        place("gastrocnemius", Side.LEFT, "50", "Vial Alder"),
                        place("gastrocnemius", Side.RIGHT, "50", "Vial Alder"),
                        place("adductors", Side.RIGHT, "30", "Vial Alder")));
        var shown = sessions.shown(parent, child);
        assertThat(shown.last()).contains(GIVEN);
        assertThat(shown.places())
                .extracting(where -> where.muscle().en() + " " + where.sides())
                .containsExactly("calf [LEFT, RIGHT]", "inside of the thigh [RIGHT]");
        assertThat(shown.places().get(0).sides()).isEqualTo(Set.of(Side.LEFT, Side.RIGHT));
    }

    @Test
    void aSessionTakenBackCountsNoMoreAndStays() {
        var session = sessions.enter(nurse, child, given(place("soleus", Side.LEFT, "40", "Vial Alder")));
        var back = new SessionData(
                State.CANCELLED, GIVEN, List.of(place("soleus", Side.LEFT, "40", "Vial Alder")), "", "", "");
        assertThat(refusal(() -> sessions.change(nurse, child, session.id(), back, 1)))
                .extracting(Problem::field)
                .containsExactly("note");
        var said = new SessionData(State.CANCELLED, GIVEN, back.places(), "", "Written for another child", "");
        sessions.change(nurse, child, session.id(), said, 1);
        assertThat(sessions.shown(parent, child).last()).isEmpty();
        assertThat(sessions.shown(parent, child).notBefore()).isEmpty();
        assertThat(sessions.all(nurse, child)).singleElement().matches(kept -> kept.version() == 2);
        assertThatThrownBy(() -> sessions.change(nurse, child, session.id(), said, 1))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void aPlannedSessionIsWrittenAnewAsGiven() {
        var plan = sessions.enter(nurse, child, planned(LocalDate.of(2026, 3, 12), ""));
        var done = new SessionData(
                State.GIVEN,
                LocalDate.of(2026, 3, 12),
                List.of(place("soleus", Side.LEFT, "40", "Vial Alder")),
                "Dr. Nwosu",
                "",
                "");
        sessions.change(nurse, child, plan.id(), done, 1);
        assertThat(sessions.shown(parent, child).planned()).isEmpty();
        assertThat(sessions.shown(parent, child).last()).contains(LocalDate.of(2026, 3, 12));
    }

    @Test
    void askTheGate() {
        var data = given(place("soleus", Side.LEFT, "40", "Vial Alder"));
        var session = sessions.enter(nurse, child, data);
        assertThatThrownBy(() -> sessions.change(nurse, ChildId.random(), session.id(), data, 1))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.RECORD_MEDICINE, Action.SEE_FAMILY_PAGES, Action.SEE_FOLDER);
        assertThatThrownBy(() -> sessions.enter(nurse, child, data)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> sessions.change(nurse, child, session.id(), data, 1))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> sessions.all(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> sessions.shown(parent, child)).isInstanceOf(NotAvailable.class);
    }
}
