package org.hearthway.surveillance.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for every rhythm, whatever was recorded. */
class RhythmProperties {

    private static final LocalDate BORN = LocalDate.of(2020, 2, 29);

    @Provide
    Arbitrary<Rhythm> rhythms() {
        var first = new Step.First(Period.ofMonths(12), Period.ofMonths(24));
        var ages = Arbitraries.integers()
                .between(2, 9)
                .set()
                .ofMaxSize(3)
                .map(years -> years.stream()
                        .sorted()
                        .map(year -> (Step) new Step.Age(
                                Period.ofYears(year), Period.ofYears(year).plusMonths(6)))
                        .toList());
        var often = Arbitraries.integers()
                .between(1, 24)
                .map(months -> new Step.Every(months, Optional.of(Period.ofMonths(24)), true));
        return net.jqwik.api.Combinators.combine(
                        ages, often, Arbitraries.integers().between(1, 24))
                .as((some, every, then) -> new Rhythm(
                        Stream.concat(
                                        Stream.concat(Stream.of((Step) first), some.stream()),
                                        Stream.of(every, new Step.Every(then, Optional.empty(), false)))
                                .toList(),
                        Period.ofMonths(3)));
    }

    private static List<Done> checks(List<Integer> days) {
        var checks = new ArrayList<Done>();
        days.stream().distinct().forEach(day -> checks.add(new Done(BORN.plusDays(day), day % 3 == 0)));
        return checks;
    }

    @Property
    void datesAscend(
            @ForAll("rhythms") Rhythm rhythm,
            @ForAll List<@IntRange(min = 100, max = 6000) Integer> days,
            @ForAll @IntRange(min = 1, max = 8) int most) {
        var ahead = rhythm.dates(BORN, checks(days), BORN.plusDays(3000), most);
        assertThat(ahead).hasSizeLessThanOrEqualTo(most);
        for (var i = 1; i < ahead.size(); i++) {
            assertThat(ahead.get(i).by()).isAfter(ahead.get(i - 1).by());
        }
        assertThat(ahead).allSatisfy(due -> assertThat(due.from()).isBeforeOrEqualTo(due.by()));
    }

    /** One more check: nothing before it comes back, and no date that stays ahead of it is an earlier one. */
    @Property
    void anotherCheckChangesOnlyWhatLiesAfterIt(
            @ForAll("rhythms") Rhythm rhythm,
            @ForAll List<@IntRange(min = 100, max = 4000) Integer> days,
            @ForAll @IntRange(min = 4001, max = 6000) int more) {
        var before = checks(days);
        var with = new ArrayList<>(before);
        with.add(new Done(BORN.plusDays(more), false));
        var ahead = rhythm.dates(BORN, with, BORN.plusDays(more), 5);
        assertThat(ahead).isNotEmpty().allSatisfy(due -> {
            assertThat(due.by()).isAfter(BORN.plusDays(more));
            assertThat(due.counted()).isIn(BORN, BORN.plusDays(more), first(with));
        });
    }

    /** Whatever is recorded later, what was due after the checks up to a day is what it was on that day. */
    @Property
    void theOrderInWhichChecksAreRecordedMakesNoDifference(
            @ForAll("rhythms") Rhythm rhythm, @ForAll List<@IntRange(min = 100, max = 6000) Integer> days) {
        var checks = checks(days);
        var turned = new ArrayList<>(checks);
        java.util.Collections.reverse(turned);
        assertThat(rhythm.dates(BORN, turned, BORN, 5)).isEqualTo(rhythm.dates(BORN, checks, BORN, 5));
    }

    /** A check recorded late of an early day never makes a later check come sooner than the rhythm from the last one. */
    @Property
    void anEarlierCheckFoundLaterLeavesTheLastOneAsTheStart(
            @ForAll("rhythms") Rhythm rhythm,
            @ForAll @IntRange(min = 3800, max = 5000) int last,
            @ForAll @IntRange(min = 100, max = 3799) int earlier) {
        var one = List.of(new Done(BORN.plusDays(last), false));
        var two = List.of(new Done(BORN.plusDays(earlier), false), one.get(0));
        assertThat(rhythm.dates(BORN, two, BORN, 3))
                .allSatisfy(due -> assertThat(due.by()).isAfter(BORN.plusDays(last)));
    }

    private static LocalDate first(List<Done> checks) {
        return checks.stream().map(Done::day).min(LocalDate::compareTo).orElseThrow();
    }
}
