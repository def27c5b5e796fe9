package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hearthway.program.engine.Lines.DAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.hearthway.program.engine.Load.Body;
import org.hearthway.program.engine.Progression.Told;

/** "When 3×10 is done with effort under 5 on 4 days, go to 3×12." Common practice, no source. */
class ProgressionProperties {

    private static final Dose NEXT = new Dose(3, 12, 0, 0, 1);
    private static final Progression RULE = new Progression(4, 5, 4, NEXT, new Body());

    private static Told good(int day) {
        return new Told(DAY.plusDays(day), true, Optional.of(4), Optional.of(1));
    }

    private static List<LocalDate> proposed(Told... told) {
        return RULE.propose(List.of(told), DAY).map(Progression.Proposal::days).orElse(List.of());
    }

    @Provide
    Arbitrary<List<Told>> told() {
        return Combinators.combine(
                        Arbitraries.integers().between(-3, 12),
                        Arbitraries.of(true, true, true, false),
                        Arbitraries.integers().between(0, 6).optional(0.9),
                        Arbitraries.integers().between(0, 5).optional(0.6))
                .as((day, whole, effort, pain) -> new Told(DAY.plusDays(day), whole, effort, pain))
                .list()
                .ofMaxSize(14);
    }

    @Example
    void fourEasyDaysProposeTheNextDose() {
        var proposal = RULE.propose(List.of(good(0), good(2), good(4), good(6)), DAY);
        assertThat(proposal).isPresent();
        assertThat(proposal.get().next()).isEqualTo(NEXT);
        assertThat(proposal.get().days()).containsExactly(DAY, DAY.plusDays(2), DAY.plusDays(4), DAY.plusDays(6));
    }

    @Example
    void threeAreNotEnoughAndTheSameDayTwiceIsOne() {
        assertThat(proposed(good(0), good(2), good(4))).isEmpty();
        assertThat(proposed(good(0), good(2), good(4), good(4))).isEmpty();
    }

    @Example
    void anEffortOfFiveIsNotUnderFive() {
        var hard = new Told(DAY.plusDays(6), true, Optional.of(5), Optional.empty());
        assertThat(proposed(good(0), good(2), good(4), hard)).isEmpty();
    }

    @Example
    void aHardDayBeginsTheCountAnew() {
        var hard = new Told(DAY.plusDays(3), true, Optional.of(7), Optional.empty());
        assertThat(proposed(good(0), good(1), good(2), hard, good(4), good(5), good(6)))
                .isEmpty();
        assertThat(proposed(hard, good(4), good(5), good(6), good(7))).hasSize(4);
    }

    @Example
    void aSoreDayADayInPartAndADayWithoutEffortDoNotCarryIt() {
        var sore = new Told(DAY.plusDays(6), true, Optional.of(2), Optional.of(4));
        var part = new Told(DAY.plusDays(6), false, Optional.of(2), Optional.of(0));
        var unrated = new Told(DAY.plusDays(6), true, Optional.empty(), Optional.of(0));
        for (var last : List.of(sore, part, unrated)) {
            assertThat(proposed(good(0), good(2), good(4), last)).isEmpty();
        }
    }

    @Example
    void whatWasToldOfTheDoseBeforeDoesNotCount() {
        assertThat(RULE.propose(List.of(good(0), good(2), good(4), good(6)), DAY.plusDays(1)))
                .isEmpty();
    }

    @Property
    void theOrderInWhichItIsToldDoesNotMatter(@ForAll("told") List<Told> told, @ForAll long seed) {
        var shuffled = new ArrayList<>(told);
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(RULE.propose(shuffled, DAY)).isEqualTo(RULE.propose(told, DAY));
    }

    @Property
    void whatCarriesAProposalIsEasyOnEveryReportOfTheDay(@ForAll("told") List<Told> told) {
        RULE.propose(told, DAY).ifPresent(proposal -> {
            assertThat(proposal.days()).hasSize(4).isSorted().doesNotHaveDuplicates();
            assertThat(told)
                    .filteredOn(one -> !one.day().isBefore(proposal.days().get(0)))
                    .allSatisfy(one -> {
                        assertThat(one.whole()).isTrue();
                        assertThat(one.effort().orElseThrow()).isLessThan(5);
                        assertThat(one.pain().orElse(0)).isLessThan(4);
                    });
        });
    }

    /** A hard day more, whenever it was, never brings a proposal that was not there. */
    @Property
    void aHardDayNeverBringsAProposal(@ForAll("told") List<Told> told) {
        var more = new ArrayList<>(told);
        more.add(new Told(DAY.plusDays(13), true, Optional.of(9), Optional.empty()));
        assertThat(RULE.propose(more, DAY)).isEmpty();
    }

    @Example
    void refusesRulesOutOfBounds() {
        assertThatThrownBy(() -> new Progression(0, 5, 4, NEXT, new Body()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Progression(29, 5, 4, NEXT, new Body()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Progression(4, 11, 4, NEXT, new Body()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Progression(4, 5, 0, NEXT, new Body()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
