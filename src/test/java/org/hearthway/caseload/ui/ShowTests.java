package org.hearthway.caseload.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;

class ShowTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);

    private static Needs.Item item(Rule rule, Optional<Needs.Aside> aside) {
        var cause = new Cause(rule, "key", TODAY, Optional.empty(), TODAY, 0, "MEDICINE/1/1", Optional.empty());
        return new Needs.Item(
                UUID.randomUUID(),
                ChildId.random(),
                cause,
                Instant.EPOCH,
                Optional.empty(),
                Optional.empty(),
                aside,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    private static EnumSet<Rule> shown(Show show) {
        return Arrays.stream(Rule.values())
                .filter(rule -> show.shows(item(rule, Optional.empty()), NURSE))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Rule.class)));
    }

    @Test
    void pathsShowsAllThatAPathWaitsForAndNothingElse() {
        assertThat(shown(Show.PATHS))
                .containsExactlyInAnyOrder(
                        Rule.STAGE_WAITS, Rule.STAGE_NO_DAY, Rule.STAGE_LATE, Rule.STAGE_VISIT, Rule.DEVICE_BEHIND);
        assertThat(Show.of(Optional.of("paths"))).isEqualTo(Show.PATHS);
    }

    @Test
    void pumpShowsRefillsAndPumpsWithoutAFill() {
        assertThat(shown(Show.PUMP)).containsExactlyInAnyOrder(Rule.REFILL, Rule.FIRST_FILL, Rule.PUMP_CONCERN);
    }

    @Test
    void stimulatorShowsGeneratorsAndWhatTheirReadingsWarnOf() {
        assertThat(shown(Show.STIMULATOR)).containsExactlyInAnyOrder(Rule.GENERATOR, Rule.DEVICE_WARNING);
    }

    @Test
    void whatIsSetAsideStandsThereAlone() {
        var aside = item(Rule.STAGE_LATE, Optional.of(new Needs.Aside(TODAY.plusDays(3), "away")));
        assertThat(Arrays.stream(Show.values()).filter(show -> show.shows(aside, NURSE)))
                .containsExactly(Show.ASIDE);
    }
}
