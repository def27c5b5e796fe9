package org.hearthway.choosing.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.hearthway.base.Bilingual;

/** What holds for every condition and whatever is known (Kleene’s strong logic, 1952). */
class ConditionProperties {

    private static final List<String> FACTS = List.of("a", "b", "c", "d");
    private static final List<String> CHOICES = List.of("x", "y", "z");

    @Provide
    Arbitrary<Condition> conditions() {
        return conditions(3);
    }

    private static Arbitrary<Condition> conditions(int depth) {
        Arbitrary<Condition> is = Combinators.combine(
                        Arbitraries.of(FACTS), Arbitraries.of(CHOICES).set().ofMinSize(1))
                .as(Condition.Is::new);
        Arbitrary<Condition> aged = Arbitraries.integers()
                .between(0, 18)
                .map(years -> new Condition.Aged(Optional.of(years), Optional.empty()));
        if (depth == 0) {
            return Arbitraries.oneOf(is, aged);
        }
        var several = conditions(depth - 1).list().ofMinSize(2).ofMaxSize(3);
        return Arbitraries.oneOf(
                is,
                aged,
                several.map(Condition.All::new),
                several.map(Condition.Any::new),
                conditions(depth - 1).map(Condition.Not::new));
    }

    @Provide
    Arbitrary<Map<String, Set<String>>> answers() {
        return Arbitraries.maps(
                        Arbitraries.of(FACTS), Arbitraries.of(CHOICES).set().ofMinSize(1))
                .ofMaxSize(FACTS.size());
    }

    @Provide
    Arbitrary<Truth> truths() {
        return Arbitraries.of(Truth.class);
    }

    private static Known known(Map<String, Set<String>> answers, int years) {
        return new Known(answers, Math.floorMod(years, 19));
    }

    @Property
    void connectivesKeepKleenesLaws(@ForAll("truths") Truth a, @ForAll("truths") Truth b, @ForAll("truths") Truth c) {
        assertThat(a.not().not()).isEqualTo(a);
        assertThat(a.and(b).not()).isEqualTo(a.not().or(b.not()));
        assertThat(a.or(b).not()).isEqualTo(a.not().and(b.not()));
        assertThat(a.and(b)).isEqualTo(b.and(a));
        assertThat(a.or(b)).isEqualTo(b.or(a));
        assertThat(a.and(b.and(c))).isEqualTo(a.and(b).and(c));
        assertThat(a.or(b.or(c))).isEqualTo(a.or(b).or(c));
        assertThat(a.and(b.or(c))).isEqualTo(a.and(b).or(a.and(c)));
        assertThat(a.or(b.and(c))).isEqualTo(a.or(b).and(a.or(c)));
        assertThat(a.or(a.and(b))).isEqualTo(a);
        assertThat(a.and(Truth.YES)).isEqualTo(a);
        assertThat(a.or(Truth.NO)).isEqualTo(a);
    }

    /** A fact that becomes known decides what was open, and turns nothing that was decided. */
    @Property
    void anotherFactTurnsNoYesIntoANoAndNoNoIntoAYes(
            @ForAll("conditions") Condition condition,
            @ForAll("answers") Map<String, Set<String>> some,
            @ForAll("answers") Map<String, Set<String>> more,
            @ForAll int years) {
        var before = condition.in(known(some, years));
        var all = new HashMap<>(more);
        all.putAll(some);
        var after = condition.in(known(all, years));
        if (before != Truth.UNKNOWN) {
            assertThat(after).isEqualTo(before);
        }
    }

    @Property
    void whatIsMissingIsNotKnownAndDecidesOnceItIs(
            @ForAll("conditions") Condition condition,
            @ForAll("answers") Map<String, Set<String>> some,
            @ForAll("answers") Map<String, Set<String>> more,
            @ForAll int years) {
        var missing = condition.missing(known(some, years));
        assertThat(missing.isEmpty()).isEqualTo(condition.in(known(some, years)) != Truth.UNKNOWN);
        assertThat(condition.facts()).containsAll(missing);
        assertThat(missing).noneMatch(some::containsKey);
        var all = new HashMap<>(some);
        missing.forEach(fact -> all.put(fact, more.getOrDefault(fact, Set.of("x"))));
        assertThat(condition.in(known(all, years))).isNotEqualTo(Truth.UNKNOWN);
    }

    @Property
    void ofNothingKnownOnlyTheAgeSaysAnything(@ForAll("conditions") Condition condition, @ForAll int years) {
        var criterion = new Criterion(
                "c",
                List.of(new Criterion.Case(condition, Mark.AGAINST, Bilingual.same("against"), Optional.empty())),
                "source");
        var lines = criterion.read(known(Map.of(), years));
        if (!condition.readsAge()) {
            assertThat(lines).extracting(Line::mark).containsExactly(Mark.MISSING);
        }
        assertThat(lines)
                .filteredOn(line -> line.mark() == Mark.MISSING)
                .allSatisfy(line -> assertThat(line.missing()).isNotEmpty());
    }

    /** A line that stands goes on standing whatever else becomes known. */
    @Property
    void aLineThatHoldsGoesOnHolding(
            @ForAll("conditions") Condition one,
            @ForAll("conditions") Condition other,
            @ForAll("answers") Map<String, Set<String>> some,
            @ForAll("answers") Map<String, Set<String>> more,
            @ForAll int years) {
        var criterion = new Criterion(
                "c",
                List.of(
                        new Criterion.Case(one, Mark.FOR, Bilingual.same("for"), Optional.empty()),
                        new Criterion.Case(other, Mark.TALK, Bilingual.same("talk"), Optional.empty())),
                "source");
        var all = new HashMap<>(more);
        all.putAll(some);
        var held = criterion.read(known(some, years)).stream()
                .filter(line -> line.mark() != Mark.MISSING)
                .toList();
        assertThat(criterion.read(known(all, years))).containsAll(held);
    }
}
