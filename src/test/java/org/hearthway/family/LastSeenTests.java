package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.family.Samples.THURSDAY;
import static org.hearthway.family.Samples.at;

import java.time.LocalDateTime;
import org.hearthway.base.Language;
import org.hearthway.testing.LeanClinic;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** Since when a change is new to a person. */
@SpringJUnitConfig(LastSeenTests.Setting.class)
class LastSeenTests {

    @Import({LeanClinic.class, LastSeen.class})
    static class Setting {}

    private static final LocalDateTime MORNING = THURSDAY.atTime(8, 0);

    private final Reader first = Samples.reader(Language.EN, MORNING);

    @Autowired
    private LastSeen lastSeen;

    private Reader later(LocalDateTime now) {
        return new Reader(first.viewer(), first.child(), Reader.FAMILY, at(now), first.words());
    }

    @Test
    void saysNothingIsNewOnTheFirstVisit() {
        assertThat(lastSeen.open(first)).isEqualTo(at(MORNING));
    }

    @Test
    void countsFromTheLastVisitOnAnEarlierDay() {
        lastSeen.open(first);
        lastSeen.open(later(MORNING.plusHours(9)));
        assertThat(lastSeen.open(later(MORNING.plusDays(2)))).isEqualTo(at(MORNING.plusHours(9)));
    }

    @Test
    void keepsTheNewsForTheWholeOfThePersonsDay() {
        lastSeen.open(first);
        lastSeen.open(later(MORNING.plusDays(2)));
        assertThat(lastSeen.open(later(MORNING.plusDays(2).plusHours(15)))).isEqualTo(at(MORNING));
    }

    @Test
    void putsAwayWhatIsNewSoFar() {
        lastSeen.open(first);
        lastSeen.open(later(MORNING.plusDays(2)));
        lastSeen.putAway(later(MORNING.plusDays(2).plusMinutes(5)));
        assertThat(lastSeen.open(later(MORNING.plusDays(2).plusMinutes(9))))
                .isEqualTo(at(MORNING.plusDays(2).plusMinutes(5)));
    }

    @Test
    void keepsPeopleApart() {
        lastSeen.open(first);
        var other = Samples.reader(Language.ES, MORNING.plusDays(2));
        var sameChild = new Reader(other.viewer(), first.child(), Reader.FAMILY, other.instant(), other.words());
        assertThat(lastSeen.open(sameChild)).isEqualTo(at(MORNING.plusDays(2)));
    }
}
