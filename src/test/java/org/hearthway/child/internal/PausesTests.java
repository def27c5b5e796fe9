package org.hearthway.child.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings.Pause;
import org.hearthway.child.Status;
import org.junit.jupiter.api.Test;

class PausesTests {

    private static LocalDate day(int day) {
        return LocalDate.of(2026, 3, day);
    }

    private static Standing said(long number, Status status, int day, Long... undoes) {
        var at = Instant.parse("2026-03-%02dT15:00:00Z".formatted(day));
        return new Standing(
                number,
                status,
                at,
                Optional.empty(),
                "why",
                Optional.empty(),
                Optional.empty(),
                Arrays.stream(undoes).findFirst());
    }

    private static List<Pause> pauses(Standing... said) {
        return Pauses.of(List.of(said), at -> at.atOffset(ZoneOffset.UTC).toLocalDate());
    }

    @Test
    void runsFromTheDayItIsSaidToTheDayBeforeItEnds() {
        var pauses = pauses(said(1, Status.AWAY, 10), said(2, Status.ACTIVE, 13));
        assertThat(pauses).containsExactly(new Pause(day(10), Optional.of(day(13))));
        assertThat(pauses.get(0).holdsOn(day(9))).isFalse();
        assertThat(pauses.get(0).holdsOn(day(10))).isTrue();
        assertThat(pauses.get(0).holdsOn(day(12))).isTrue();
        assertThat(pauses.get(0).holdsOn(day(13))).isFalse();
    }

    @Test
    void goesOnFromOneStatusToTheNextThatAsksNothing() {
        assertThat(pauses(said(1, Status.AWAY, 10), said(2, Status.MOVED, 12)))
                .containsExactly(new Pause(day(10), Optional.empty()));
    }

    @Test
    void whatWasTakenBackNeverWas() {
        assertThat(pauses(said(1, Status.DIED, 10), said(2, Status.ACTIVE, 11, 1L)))
                .isEmpty();
        assertThat(pauses(said(1, Status.AWAY, 8), said(2, Status.DIED, 10), said(3, Status.AWAY, 11, 2L)))
                .containsExactly(new Pause(day(8), Optional.empty()));
    }
}
