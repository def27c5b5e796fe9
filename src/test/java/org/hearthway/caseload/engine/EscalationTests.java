package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.caseload.engine.Escalation.Turn;
import org.hearthway.sign.engine.OfficeHours;
import org.junit.jupiter.api.Test;

/** Nights of the clock change: 2026-03-08 and 2026-11-01 in the United States (15 U.S.C. 260a). */
class EscalationTests {

    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final AccountId ANA = AccountId.random();
    private static final AccountId BEN = AccountId.random();
    private static final AccountId CEM = AccountId.random();
    private static final OfficeHours HOURS = new OfficeHours(
            LocalTime.of(8, 0),
            LocalTime.of(16, 30),
            ZONE,
            day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue());
    private static final Escalation ORDER =
            new Escalation(Duration.ofMinutes(15), List.of(ANA, BEN), List.of(CEM, BEN), HOURS);

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(ZONE).toInstant();
    }

    private static List<LocalTime> clocks(List<Turn> turns) {
        return turns.stream()
                .map(turn -> LocalTime.ofInstant(turn.from(), ZONE))
                .toList();
    }

    private static List<AccountId> people(List<Turn> turns) {
        return turns.stream().map(Turn::person).toList();
    }

    @Test
    void theFirstIsToldAtOnceAndEachNextAfterAQuarterOfAnHour() {
        var reported = at("2026-03-12T10:00:00");
        var turns = ORDER.timeline(reported, Optional.empty(), reported.plusSeconds(3_600));
        assertThat(people(turns)).containsExactly(ANA, BEN, ANA, BEN);
        assertThat(clocks(turns))
                .containsExactly(LocalTime.of(10, 0), LocalTime.of(10, 15), LocalTime.of(10, 30), LocalTime.of(10, 45));
        assertThat(Escalation.startedOver(turns.subList(0, 2))).isFalse();
        assertThat(Escalation.startedOver(turns.subList(0, 3))).isTrue();
    }

    @Test
    void inTheNightOfTheGapNobodyWaitsLonger() {
        // at 02:00 the clock goes to 03:00; a report "at 02:00" stands at 03:00
        var reported = at("2026-03-08T02:00:00");
        assertThat(reported).isEqualTo(Instant.parse("2026-03-08T07:00:00Z"));
        var turns = ORDER.timeline(reported, Optional.empty(), reported.plusSeconds(45 * 60));
        assertThat(clocks(turns)).containsExactly(LocalTime.of(3, 0), LocalTime.of(3, 15), LocalTime.of(3, 30));
        var before = at("2026-03-08T01:50:00");
        assertThat(clocks(ORDER.timeline(before, Optional.empty(), before.plusSeconds(30 * 60))))
                .containsExactly(LocalTime.of(1, 50), LocalTime.of(3, 5));
    }

    @Test
    void inTheNightOfTheHourThatComesTwiceNobodyWaitsAnHourMore() {
        // 01:50 summer time is ten minutes before the clock goes back to 01:00
        var reported = at("2026-11-01T01:50:00");
        assertThat(reported).isEqualTo(Instant.parse("2026-11-01T05:50:00Z"));
        var turns = ORDER.timeline(reported, Optional.empty(), reported.plusSeconds(45 * 60));
        assertThat(clocks(turns)).containsExactly(LocalTime.of(1, 50), LocalTime.of(1, 5), LocalTime.of(1, 20));
        assertThat(turns.get(1).from()).isEqualTo(Instant.parse("2026-11-01T06:05:00Z"));
        var two = at("2026-11-01T02:00:00");
        assertThat(clocks(ORDER.timeline(two, Optional.empty(), two.plusSeconds(16 * 60))))
                .containsExactly(LocalTime.of(2, 0), LocalTime.of(2, 15));
    }

    @Test
    void whenTheOfficeClosesTheOtherOrderGoesOn() {
        var reported = at("2026-03-12T16:20:00");
        var turns = ORDER.timeline(reported, Optional.empty(), reported.plusSeconds(46 * 60));
        assertThat(people(turns)).containsExactly(ANA, CEM, BEN, CEM);
    }

    @Test
    void theOfficeOpensByTheClockOnTheDayAfterTheChange() {
        var monday = at("2026-03-09T07:50:00");
        assertThat(people(ORDER.timeline(monday, Optional.empty(), monday.plusSeconds(16 * 60))))
                .containsExactly(CEM, ANA);
        var sunday = at("2026-03-08T10:00:00");
        assertThat(people(ORDER.timeline(sunday, Optional.empty(), sunday.plusSeconds(1))))
                .containsExactly(CEM);
    }

    @Test
    void takingItUpInTheVeryMinuteTellsNobodyElse() {
        var reported = at("2026-03-12T10:00:00");
        var turns = ORDER.timeline(reported, Optional.of(reported.plusSeconds(15 * 60)), reported.plusSeconds(3_600));
        assertThat(people(turns)).containsExactly(ANA);
    }

    @Test
    void anEmptyOrderTellsNobodyAndHalfAnOrderIsBetterThanNone() {
        var reported = at("2026-03-12T22:00:00");
        var nobody = new Escalation(Duration.ofMinutes(15), List.of(), List.of(), HOURS);
        assertThat(nobody.timeline(reported, Optional.empty(), reported.plusSeconds(3_600)))
                .isEmpty();
        var office = new Escalation(Duration.ofMinutes(15), List.of(ANA), List.of(), HOURS);
        assertThat(people(office.timeline(reported, Optional.empty(), reported.plusSeconds(20 * 60))))
                .containsExactly(ANA, ANA);
    }

    @Test
    void aProgramThatStoodStillTellsOnePersonAndCountsFromThere() {
        var reported = at("2026-03-12T01:00:00");
        var told = List.of(new Turn(1, CEM, reported));
        var woken = at("2026-03-12T09:07:00");
        assertThat(ORDER.due(told, reported, woken)).contains(new Turn(2, ANA, woken));
        assertThat(ORDER.due(told, reported, reported.plusSeconds(14 * 60))).isEmpty();
        assertThat(ORDER.due(told, reported, reported.plusSeconds(15 * 60 + 7)))
                .contains(new Turn(2, BEN, reported.plusSeconds(15 * 60)));
    }
}
