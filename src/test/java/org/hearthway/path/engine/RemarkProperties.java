package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Advice.Ages;
import org.hearthway.path.engine.Remark.Answer;

/** What holds for any child and any advice. */
class RemarkProperties {

    private static final LocalDate SURGERY = LocalDate.of(2026, 2, 10);

    private static Answer answer(int from, Optional<Integer> to, LocalDate born) {
        var advice = new Advice(
                "age", Optional.of(new Ages(from, to, "operation")), new TreeSet<>(), Bilingual.same("ages"), "test");
        var template = new Template(
                "test",
                1,
                Bilingual.same("test"),
                Optional.empty(),
                List.of(Paths.stage("operation", Paths.begins())),
                List.of(advice));
        var plan = Paths.plan(template, Paths.begun(SURGERY.toString()), Paths.EVERY_DAY, SURGERY);
        return Remark.on(plan, born, Optional.empty()).get(0).answer();
    }

    /** Said without completed years: usual from the birthday of the lower age to the eve of the one after the upper. */
    @Property
    void agesGoFromABirthdayToTheEveOfABirthday(
            @ForAll @IntRange(max = 9_000) int daysOld,
            @ForAll @IntRange(max = 18) int from,
            @ForAll @IntRange(max = 7) int more) {
        var born = SURGERY.minusDays(daysOld);
        // a leap-day child has its own example
        if (born.getMonthValue() == 2 && born.getDayOfMonth() == 29) {
            return;
        }
        var usual = !SURGERY.isBefore(born.plusYears(from)) && SURGERY.isBefore(born.plusYears(from + more + 1L));
        assertThat(answer(from, Optional.of(from + more), born)).isEqualTo(usual ? Answer.USUAL : Answer.OUTSIDE);
    }

    @Property
    void withoutAnUpperAgeGrowingOlderNeverLeavesTheUsual(
            @ForAll @IntRange(max = 8_000) int daysOld,
            @ForAll @IntRange(max = 1_000) int older,
            @ForAll @IntRange(max = 18) int from) {
        var younger = answer(from, Optional.empty(), SURGERY.minusDays(daysOld));
        var elder = answer(from, Optional.empty(), SURGERY.minusDays(daysOld + (long) older));
        assertThat(younger == Answer.USUAL && elder == Answer.OUTSIDE).isFalse();
    }
}
