package org.hearthway.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.engine.Gestation;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class ChildIdentityTests {

    private static final LocalDate BORN = LocalDate.of(2024, 11, 20);

    @Autowired
    private ChildRegister register;

    private final Viewer.Person coordinator = People.with(Role.COORDINATOR);

    private static ChildData data(Names names, Allergies allergies) {
        return new ChildData(names, BORN, Optional.of(new Gestation(31, 4)), Optional.of(2), 3, allergies, "Spanish");
    }

    @Test
    void keepsEverythingThatWasEntered() {
        var entered = data(
                new Names("Lía", "Rosalía", "Abellán", "Quintero"),
                new Allergies(true, List.of("latex: rash", "penicillin: swelling")));
        var id = register.enter(coordinator, entered);
        assertThat(register.get(coordinator, id).data()).isEqualTo(entered);
        assertThat(register.get(coordinator, id).fullName()).isEqualTo("Lía Abellán Quintero");
        assertThat(entered.names().legal()).isEqualTo("Rosalía Abellán Quintero");
    }

    @Test
    void keepsFormerNamesAndNoOtherChangeAsOne() {
        var id = register.enter(coordinator, data(Names.plain("Lía", "Abellán"), Allergies.NOT_ASKED));
        register.change(coordinator, id, data(Names.plain("Lía", "Abellán"), new Allergies(true, List.of())), 1);
        register.change(coordinator, id, data(new Names("Leo", "", "Abellán", ""), Allergies.NOT_ASKED), 2);
        assertThat(register.names(coordinator, id))
                .extracting(former -> former.names().used())
                .containsExactly("Leo", "Lía");
    }

    @Test
    void refusesWhatCannotBeAndNamesEachField() {
        var names = new Names("", "g".repeat(81), "", "s".repeat(121));
        var wrong = new ChildData(
                names,
                LocalDate.of(2026, 3, 13),
                Optional.empty(),
                Optional.of(6),
                5,
                new Allergies(false, List.of("latex")),
                "i".repeat(61));
        assertThatThrownBy(() -> register.enter(coordinator, wrong))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::field)
                                .containsExactlyInAnyOrder(
                                        "usedName",
                                        "givenName",
                                        "familyName",
                                        "secondSurname",
                                        "birthDate",
                                        "gmfcs",
                                        "skinTone",
                                        "allergies",
                                        "interpreter"));
    }

    @Test
    void takesTwentyAllergiesAndNoMore() {
        var names = Names.plain("Lía", "Abellán");
        register.enter(coordinator, data(names, new Allergies(true, Collections.nCopies(20, "x".repeat(200)))));
        for (var tooMuch : List.of(Collections.nCopies(21, "x"), List.of("x".repeat(201)))) {
            assertThatThrownBy(() -> register.enter(coordinator, data(names, new Allergies(true, tooMuch))))
                    .isInstanceOf(Invalid.class);
        }
    }

    @Test
    void saysWhoIsHereAlready() {
        var surname = "Ybarrondo" + System.identityHashCode(this);
        var id = register.enter(coordinator, data(Names.plain("Lía", surname), Allergies.NOT_ASKED));
        assertThat(register.alike(coordinator, data(Names.plain("Lia", surname), Allergies.NOT_ASKED)))
                .extracting(alike -> alike.child().id())
                .containsExactly(id);
        assertThat(register.alike(coordinator, data(Names.plain("Lia", "Somebody"), Allergies.NOT_ASKED)))
                .isEmpty();
    }
}
