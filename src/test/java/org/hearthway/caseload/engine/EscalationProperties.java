package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.base.AccountId;
import org.hearthway.caseload.engine.Escalation.Turn;
import org.hearthway.sign.engine.OfficeHours;

class EscalationProperties {

    private static final Instant YEAR = Instant.parse("2026-01-01T00:00:00Z");
    private static final List<String> ZONES =
            List.of("America/New_York", "Europe/Madrid", "Australia/Lord_Howe", "America/Phoenix");

    private static List<AccountId> people(int count) {
        return IntStream.range(0, count).mapToObj(n -> AccountId.random()).toList();
    }

    private static Escalation order(int minutes, int office, int outside, int zone) {
        return new Escalation(
                Duration.ofMinutes(minutes),
                people(office),
                people(outside),
                new OfficeHours(
                        LocalTime.of(8, 0),
                        LocalTime.of(16, 30),
                        ZoneId.of(ZONES.get(zone)),
                        day -> day.getDayOfWeek().getValue() < 6));
    }

    @Property
    void betweenTwoTurnsLieExactlyTheMinutesOnAnyDayOfTheYear(
            @ForAll @IntRange(min = 0, max = 365 * 24 * 60) int minute,
            @ForAll @IntRange(min = 5, max = 120) int minutes,
            @ForAll @IntRange(min = 1, max = 4) int office,
            @ForAll @IntRange(min = 1, max = 4) int outside,
            @ForAll @IntRange(min = 0, max = 3) int zone) {
        var order = order(minutes, office, outside, zone);
        var reported = YEAR.plusSeconds(minute * 60L);
        var turns = order.timeline(reported, Optional.empty(), reported.plus(Duration.ofHours(12)));
        for (int i = 0; i < turns.size(); i++) {
            assertThat(turns.get(i).from()).isEqualTo(reported.plus(Duration.ofMinutes((long) i * minutes)));
            assertThat(turns.get(i).number()).isEqualTo(i + 1);
        }
        assertThat(turns).hasSize((int) Math.ceil(12 * 60 / (double) minutes));
    }

    @Property
    void nobodyIsToldTwiceBeforeEverybodyInTheOrderWasTold(
            @ForAll @IntRange(min = 0, max = 365 * 24 * 60) int minute, @ForAll @IntRange(min = 1, max = 6) int count) {
        var team = people(count);
        var order = new Escalation(
                Duration.ofMinutes(10), team, team, order(10, 1, 1, 0).hours());
        var reported = YEAR.plusSeconds(minute * 60L);
        var turns = order.timeline(reported, Optional.empty(), reported.plus(Duration.ofHours(6)));
        var counts = turns.stream().collect(Collectors.groupingBy(Turn::person, Collectors.counting()));
        assertThat(turns.subList(0, count)).extracting(Turn::person).containsExactlyElementsOf(team);
        assertThat(counts.values().stream().max(Long::compare).orElseThrow()
                        - counts.values().stream().min(Long::compare).orElseThrow())
                .isLessThanOrEqualTo(1);
    }

    @Property
    void afterTakingUpNobodyIsTold(
            @ForAll @IntRange(min = 0, max = 365 * 24 * 60) int minute,
            @ForAll @IntRange(min = 0, max = 600) int taken,
            @ForAll @IntRange(min = 5, max = 120) int minutes) {
        var order = order(minutes, 3, 2, 1);
        var reported = YEAR.plusSeconds(minute * 60L);
        var takenUp = reported.plus(Duration.ofMinutes(taken));
        var all = order.timeline(reported, Optional.empty(), reported.plus(Duration.ofHours(12)));
        var turns = order.timeline(reported, Optional.of(takenUp), reported.plus(Duration.ofHours(12)));
        assertThat(turns).allMatch(turn -> turn.from().isBefore(takenUp));
        assertThat(all.subList(0, turns.size())).isEqualTo(turns);
    }

    @Property
    void lookingEveryFewSecondsComesToTheSameTimeline(
            @ForAll @IntRange(min = 0, max = 365 * 24 * 60) int minute,
            @ForAll @IntRange(min = 1, max = 59) int beat,
            @ForAll @IntRange(min = 0, max = 3) int zone) {
        var order = order(15, 3, 2, zone);
        var reported = YEAR.plusSeconds(minute * 60L);
        var until = reported.plus(Duration.ofHours(3));
        var told = new ArrayList<Turn>();
        for (var now = reported; now.isBefore(until); now = now.plusSeconds(beat)) {
            order.due(told, reported, now).ifPresent(told::add);
        }
        assertThat(told).isEqualTo(order.timeline(reported, Optional.empty(), until));
    }
}
