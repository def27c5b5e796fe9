package org.hearthway.program.engine.week;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.program.engine.week.Weeks.ask;
import static org.hearthway.program.engine.week.Weeks.with;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.hearthway.program.engine.week.Ask.Phase;

class SessionOrderProperties {

    private static final List<String> THINGS = List.of("", "mat", "band", "step");

    @Provide
    Arbitrary<List<Ask>> sessions() {
        return Combinators.combine(Arbitraries.of(Phase.class), Arbitraries.of(THINGS))
                .as((phase, thing) -> with(ask("x", 5, 1), phase, thing))
                .list()
                .ofMaxSize(6)
                .map(SessionOrderProperties::named);
    }

    private static List<Ask> named(List<Ask> asks) {
        var named = new ArrayList<Ask>();
        for (int i = 0; i < asks.size(); i++) {
            named.add(with(ask("e" + i, 5, 1), asks.get(i).phase(), asks.get(i).equipment()));
        }
        return named;
    }

    private static int changes(List<Ask> order) {
        var changes = 0;
        var there = "";
        for (var ask : order) {
            if (!ask.equipment().isEmpty()) {
                changes += there.isEmpty() || there.equals(ask.equipment()) ? 0 : 1;
                there = ask.equipment();
            }
        }
        return changes;
    }

    private static int fewest(List<Ask> rest, List<Ask> order) {
        if (rest.isEmpty()) {
            return changes(order);
        }
        var next = rest.stream().map(Ask::phase).min(Comparator.naturalOrder()).orElseThrow();
        var fewest = Integer.MAX_VALUE;
        for (var ask : rest) {
            if (ask.phase() == next) {
                var left = new ArrayList<>(rest);
                left.remove(ask);
                var more = new ArrayList<>(order);
                more.add(ask);
                fewest = Math.min(fewest, fewest(left, more));
            }
        }
        return fewest;
    }

    @Property(tries = 300)
    void noOrderOfThePhasesHasFewerChanges(@ForAll("sessions") List<Ask> asks) {
        var order = SessionOrder.of(asks);
        assertThat(order.exercises()).containsExactlyInAnyOrderElementsOf(asks);
        assertThat(order.exercises()).isSortedAccordingTo(Comparator.comparing(Ask::phase));
        assertThat(order.changes()).isEqualTo(changes(order.exercises())).isEqualTo(fewest(asks, List.of()));
    }

    @Property(tries = 300)
    void theSearchCountsTheSameChanges(@ForAll("sessions") List<Ask> asks) {
        var things = new long[Phase.values().length];
        asks.stream()
                .filter(ask -> !ask.equipment().isEmpty())
                .forEach(ask -> things[ask.phase().ordinal()] |= 1L << THINGS.indexOf(ask.equipment()));
        assertThat(DayFit.changes(things)).isEqualTo(SessionOrder.of(asks).changes());
    }

    @Property(tries = 100)
    void theOrderInWhichTheyAreGivenDoesNotMatter(@ForAll("sessions") List<Ask> asks, @ForAll long seed) {
        var shuffled = new ArrayList<>(asks);
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(SessionOrder.of(shuffled)).isEqualTo(SessionOrder.of(asks));
    }

    /** Common practice, no source. */
    @Example
    void stretchingComesAfterStrengthAndWarmingUpFirst() {
        var order = SessionOrder.of(List.of(
                with(ask("stretch", 5, 1), Phase.STRETCH, "mat"),
                with(ask("bridge", 5, 1), Phase.STRENGTH, "mat"),
                with(ask("step-up", 5, 1), Phase.STRENGTH, "step"),
                with(ask("march", 5, 1), Phase.WARM_UP, "")));
        assertThat(order.exercises())
                .extracting(Ask::exercise)
                .containsExactly("march", "step-up", "bridge", "stretch");
        assertThat(order.changes()).isEqualTo(1);
    }
}
