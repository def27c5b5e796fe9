package org.hearthway.program.internal;

import java.time.LocalDate;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/**
 * What tests of home programs share: a child of its own for each test, and before each of them everything that one of
 * them may have turned is as it was. The clock stands at Thursday, March 12, 2026, 10:00 in New York.
 */
@SpringJUnitConfig(ProgramSetting.class)
abstract class OnAProgram {

    static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    HomeWeek week;

    @Autowired
    Programs programs;

    @Autowired
    ProgramSetting.Heard heard;

    @Autowired
    ProgramSetting.RulesOfCare path;

    @Autowired
    ProgramSetting.Accepted accepted;

    @Autowired
    LeanClinic.OpenGate gate;

    @Autowired
    SettableClock clock;

    final ChildId child = ChildId.random();
    final Viewer.Person therapist = person("Therapist", Role.THERAPIST);
    final Viewer.Person parent = person("Parent", Role.CAREGIVER);

    static Viewer.Person person(String name, Role role) {
        return new Viewer.Person(AccountId.random(), name, Set.of(role), Language.EN, LeanClinic.NEW_YORK);
    }

    @BeforeEach
    void asOnAnyMorning() {
        gate.deny();
        path.none();
        accepted.hidden.clear();
        heard.failing = false;
        heard.changes.clear();
        clock.set(HearthwayTest.START);
    }
}
