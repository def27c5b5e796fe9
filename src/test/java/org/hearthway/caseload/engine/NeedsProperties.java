package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.caseload.engine.Samples.OFFICE;
import static org.hearthway.caseload.engine.Samples.TODAY;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.base.AccountId;

class NeedsProperties {

    private static final Instant NOON = Instant.parse("2026-03-12T16:00:00Z");

    @Property(tries = 300)
    void everyKeyStandsOnce(@ForAll("facts") Facts facts) {
        assertThat(Samples.rules().causes(facts, TODAY)).extracting(Cause::key).doesNotHaveDuplicates();
    }

    @Property(tries = 300)
    void theOrderOfTheFactsDoesNotMatter(@ForAll("facts") Facts facts) {
        var turned = new Facts(
                reversed(facts.reports()),
                reversed(facts.pains()),
                reversed(facts.homeDays()),
                facts.refill(),
                reversed(facts.criticalVisits()),
                reversed(facts.tasks()),
                facts.home().answered(Rule.NO_LOG));
        assertThat(Samples.rules().causes(turned, TODAY))
                .isEqualTo(Samples.rules().causes(facts, TODAY));
    }

    @Property(tries = 300)
    void reconcilingTwiceChangesNothing(@ForAll("facts") Facts before, @ForAll("facts") Facts after) {
        var list = new Listed();
        list.bringInLine(before, TODAY);
        list.bringInLine(after, TODAY.plusDays(1));
        assertThat(list.bringInLine(after, TODAY.plusDays(1)).isEmpty()).isTrue();
    }

    @Property(tries = 300)
    void whatHappenedStaysUntilAPersonClosesIt(@ForAll("facts") Facts before, @ForAll("facts") Facts after) {
        var list = new Listed();
        list.bringInLine(before, TODAY);
        var happened = list.open.values().stream()
                .filter(cause -> cause.rule().isHappening())
                .map(Cause::key)
                .toList();
        Assume.that(!happened.isEmpty());
        list.bringInLine(after, TODAY.plusDays(9));
        assertThat(list.open.keySet()).containsAll(happened);
        happened.forEach(list::close);
        list.bringInLine(after, TODAY.plusDays(9));
        assertThat(list.open.keySet()).doesNotContainAnyElementsOf(happened);
    }

    @Property(tries = 300)
    void theListIsExactlyWhatStands(@ForAll("facts") Facts before, @ForAll("facts") Facts after) {
        var list = new Listed();
        list.bringInLine(before, TODAY);
        list.bringInLine(after, TODAY.plusDays(1));
        var lasting = list.open.values().stream()
                .filter(cause -> !cause.rule().isHappening())
                .collect(Collectors.toSet());
        var standing = Samples.rules().causes(after, TODAY.plusDays(1)).stream()
                .filter(cause -> !cause.rule().isHappening())
                .collect(Collectors.toSet());
        assertThat(lasting).isEqualTo(standing);
    }

    @Property(tries = 300)
    void aStricterBookFindsAtLeastAsMuch(
            @ForAll("facts") Facts facts,
            @ForAll @IntRange(min = 1, max = 10) int pain,
            @ForAll @IntRange(min = 1, max = 9) int silent,
            @ForAll @IntRange(min = 1, max = 30) int refill) {
        var loose = new NeedsRules(Samples.book(pain, silent + 1, refill), OFFICE).causes(facts, TODAY);
        var strict =
                new NeedsRules(Samples.book(Math.max(0, pain - 1), silent, refill + 1), OFFICE).causes(facts, TODAY);
        assertThat(keys(strict)).containsAll(keys(loose));
    }

    @Property(tries = 300)
    void oneMoreLogNeverMakesASilence(@ForAll("facts") Facts facts, @ForAll @IntRange(min = 0, max = 20) int back) {
        var day = TODAY.minusDays(back);
        var more = new ArrayList<>(facts.homeDays());
        more.removeIf(home -> home.date().equals(day));
        more.add(new Facts.HomeDay(day, true));
        var logged = new Facts(
                facts.reports(),
                facts.pains(),
                more,
                facts.refill(),
                facts.criticalVisits(),
                facts.tasks(),
                facts.home().answered(Rule.NO_LOG));
        if (!has(facts, Rule.NO_LOG)) {
            assertThat(has(logged, Rule.NO_LOG)).isFalse();
        }
    }

    @Property(tries = 300)
    void nothingIsDueOnAClosedDayUnlessItHasAClockOrADateOfItsOwn(@ForAll("facts") Facts facts) {
        Samples.rules().causes(facts, TODAY).stream()
                .filter(cause -> cause.dueAt().isEmpty() && cause.rule() != Rule.REFILL)
                .forEach(cause -> assertThat(OFFICE.openDay(cause.dueDay(), 0)).isEqualTo(cause.dueDay()));
    }

    private static boolean has(Facts facts, Rule rule) {
        return Samples.rulesOf(Samples.rules().causes(facts, TODAY)).anyMatch(rule::equals);
    }

    private static Set<String> keys(List<Cause> causes) {
        return causes.stream().map(Cause::key).collect(Collectors.toSet());
    }

    private static <T> List<T> reversed(List<T> list) {
        var turned = new ArrayList<>(list);
        java.util.Collections.reverse(turned);
        return turned;
    }

    /** The list as the storage keeps it, in memory. */
    private static final class Listed {
        private final Map<String, Cause> open = new TreeMap<>();
        private final Set<String> closed = new HashSet<>();

        Reconciliation bringInLine(Facts facts, LocalDate today) {
            var work = Reconciliation.of(
                    List.copyOf(open.values()), closed, Samples.rules().causes(facts, today), facts);
            work.open().forEach(cause -> open.put(cause.key(), cause));
            work.refreshed().forEach(cause -> open.put(cause.key(), cause));
            work.ended().keySet().forEach(open::remove);
            return work;
        }

        void close(String key) {
            open.remove(key);
            closed.add(key);
        }
    }

    @Provide
    Arbitrary<Facts> facts() {
        var moment = Arbitraries.integers().between(0, 72).map(hours -> NOON.minusSeconds(hours * 3_600L));
        var day = Arbitraries.integers().between(0, 20).map(back -> TODAY.minusDays(back));
        var id = Arbitraries.integers().between(1, 9).map(n -> new UUID(0, n));
        var report =
                Combinators.combine(id, Arbitraries.of(Urgency.class), moment).as(Facts.Report::new);
        var pain = Combinators.combine(
                        id,
                        Arbitraries.of("calf-stretch", "sit-to-stand"),
                        day,
                        Arbitraries.integers().between(0, 10),
                        moment)
                .as(Facts.Pain::new);
        var homeDay =
                Combinators.combine(day, Arbitraries.of(true, false, false)).as(Facts.HomeDay::new);
        var refill = Combinators.combine(
                        Arbitraries.integers().between(-10, 40).map(n -> TODAY.plusDays(n)),
                        Arbitraries.of(true, false))
                .as(Facts.Refill::new);
        var visit = Combinators.combine(
                        id.map(UUID::toString),
                        Arbitraries.of("refill", "wound-check"),
                        day,
                        moment,
                        Arbitraries.of(true, false, false))
                .as(Facts.CriticalVisit::new);
        var person = Arbitraries.longs().between(1, 3).map(number -> new AccountId(new UUID(0, number)));
        var task = Combinators.combine(
                        Arbitraries.longs().between(1, 20).map(String::valueOf),
                        day,
                        Arbitraries.of(true, false),
                        person.optional(0.6))
                .as(Facts.OpenTask::new);
        Arbitrary<Optional<LocalDate>> answered = day.optional(0.3);
        return Combinators.combine(
                        report.list().ofMaxSize(3).uniqueElements(Facts.Report::key),
                        pain.list().ofMaxSize(4).uniqueElements(Facts.Pain::key),
                        homeDay.list().ofMaxSize(15).uniqueElements(Facts.HomeDay::date),
                        refill.optional(0.6),
                        visit.list().ofMaxSize(6).uniqueElements(Facts.CriticalVisit::key),
                        task.list().ofMaxSize(4).uniqueElements(Facts.OpenTask::key),
                        answered)
                .as(Facts::new);
    }
}
