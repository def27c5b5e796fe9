package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.browser.RunningClinic;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.program.Progress;
import org.hearthway.program.engine.trend.RunChart.Change;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Six weeks of ticks in the demo, whatever weekday it is laid out on: one child's pain rises, another's goes up and down. */
class DemoTrendsTests {

    private static final Viewer MACHINE = new Viewer.Machine("test");
    private static final Set<Rule> PAINS = EnumSet.of(Rule.PAIN, Rule.PAIN_RISING, Rule.PAIN_OFTEN, Rule.STOPPED);

    private static ChildId child(RunningClinic clinic, String name) {
        return clinic.part(ChildRegister.class).all(MACHINE).stream()
                .filter(child -> child.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static List<Cause> causes(RunningClinic clinic, String name) {
        var child = child(clinic, name);
        return clinic.part(Needs.class).open(MACHINE).stream()
                .filter(item -> item.child().equals(child))
                .map(Needs.Item::cause)
                .toList();
    }

    private static Change change(RunningClinic clinic, String name) {
        var weeks = clinic.part(Progress.class).weeks(MACHINE, child(clinic, name), 6);
        return Objects.requireNonNull(weeks.all().pain().get(Rater.CHILD)).change();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-03-12T14:00:00Z", "2026-03-15T22:00:00Z", "2026-03-17T11:00:00Z"})
    void risingPainIsFoundAndANoisyChildIsNotFlagged(Instant now) {
        try (var clinic = RunningClinic.demoAt(now)) {
            clinic.part(NeedsWatch.class).lookAtAll();
            assertThat(change(clinic, "Marlow")).isEqualTo(Change.RISING);
            assertThat(causes(clinic, "Marlow"))
                    .as("no single pain is severe, nor are there many sore days: the run chart alone finds it")
                    .filteredOn(cause -> PAINS.contains(cause.rule()))
                    .extracting(Cause::rule)
                    .containsExactly(Rule.PAIN_RISING);
            assertThat(causes(clinic, "Elias")).extracting(Cause::key).contains("more/band-pull/2");
            for (var day = 0; day < 8; day++) {
                assertThat(change(clinic, "Runa")).isEqualTo(Change.NONE);
                assertThat(causes(clinic, "Runa"))
                        .as("after " + day + " days")
                        .noneMatch(cause -> PAINS.contains(cause.rule()));
                clinic.clock().advance(Duration.ofDays(1));
                clinic.part(NeedsWatch.class).lookAtAll();
            }
        }
    }
}
