package org.hearthway.child.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.child.ChildRegister.Likeness.NAME_AND_BIRTH_DATE;
import static org.hearthway.child.ChildRegister.Likeness.NAME_AND_NEAR_BIRTH_DATE;
import static org.hearthway.child.ChildRegister.Likeness.SURNAME_AND_BIRTH_DATE;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister.Likeness;
import org.hearthway.child.Names;
import org.junit.jupiter.api.Test;

class ResemblanceTests {

    private static final LocalDate BORN = LocalDate.of(2019, 5, 4);
    private static final ChildData KNOWN = child(new Names("Lucía", "María Lucía", "Peña", "Ibarra-Solano"), BORN);

    private static ChildData child(Names names, LocalDate born) {
        return ChildData.plain(names, born, Optional.empty(), 2);
    }

    private static Set<Likeness> with(String used, String surnames, LocalDate born) {
        return Resemblance.between(KNOWN, child(Names.plain(used, surnames), born));
    }

    @Test
    void findsTheSameChildHoweverTheNamesAreWritten() {
        assertThat(with("lucia", "PENA", BORN)).containsExactly(NAME_AND_BIRTH_DATE);
        assertThat(with("Maria", "Ibarra Pena", BORN)).containsExactly(NAME_AND_BIRTH_DATE);
        assertThat(with("Lucía", "Solano", BORN)).containsExactly(NAME_AND_BIRTH_DATE);
    }

    @Test
    void forgivesOneSlipInALongWordAndNoneInAShortOne() {
        assertThat(with("Lusía", "Ibara", BORN)).containsExactly(NAME_AND_BIRTH_DATE);
        assertThat(with("Lucía", "Pela", BORN)).isEmpty();
    }

    @Test
    void findsABirthDateWithDayAndMonthExchangedOrOneDigitWrong() {
        assertThat(with("Lucía", "Peña", LocalDate.of(2019, 4, 5))).containsExactly(NAME_AND_NEAR_BIRTH_DATE);
        assertThat(with("Lucía", "Peña", LocalDate.of(2018, 5, 4))).containsExactly(NAME_AND_NEAR_BIRTH_DATE);
        assertThat(with("Lucía", "Peña", LocalDate.of(2018, 5, 14))).isEmpty();
    }

    @Test
    void asksAboutTwins() {
        assertThat(with("Bruno", "Peña", BORN)).containsExactly(SURNAME_AND_BIRTH_DATE);
    }

    @Test
    void leavesOthersAlone() {
        assertThat(with("Lucía", "Marchetti", BORN)).isEmpty();
        assertThat(with("Bruno", "Peña", LocalDate.of(2015, 1, 9))).isEmpty();
    }
}
