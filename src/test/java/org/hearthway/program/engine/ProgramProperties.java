package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.Adherence.Session;
import org.hearthway.program.engine.ProgramDiff.LineDiff;
import org.hearthway.program.engine.WeekSchedule.Dated;

class ProgramProperties {

    private static final Map<String, Boolean> LIBRARY = Map.of("bridge", false, "clam", true);

    @Provide
    Arbitrary<List<ProgramLine>> anyLines() {
        return Lines.any().list().ofMaxSize(5);
    }

    @Provide
    Arbitrary<List<ProgramLine>> soundLines() {
        return Lines.sound().list().ofMaxSize(7);
    }

    @Provide
    Arbitrary<List<Session>> sessions() {
        return Combinators.combine(Arbitraries.of(true, false), Arbitraries.of(Said.class))
                .as(Session::new)
                .list()
                .ofMaxSize(40);
    }

    @Provide
    Arbitrary<List<Dated>> versions() {
        return Combinators.combine(
                        Arbitraries.integers().between(-10, 10),
                        Lines.sound().list().ofMaxSize(3))
                .as((days, lines) -> new Dated(1, Lines.DAY.plusDays(days), lines))
                .list()
                .ofMaxSize(6)
                .map(all -> IntStream.range(0, all.size())
                        .mapToObj(i -> new Dated(
                                i + 1, all.get(i).effective(), all.get(i).lines()))
                        .toList());
    }

    @Property
    void whatIsTakenLiesWithinTheBounds(@ForAll("anyLines") List<ProgramLine> lines) {
        if (ProgramRules.check(lines, LIBRARY).isEmpty()) {
            assertThat(lines).allSatisfy(line -> {
                assertThat(LIBRARY).containsKey(line.exercise());
                assertThat(line.dose().sets()).isBetween(1, 10);
                assertThat(line.dose().repetitions() == 0)
                        .isNotEqualTo(line.dose().minutes() == 0);
                assertThat(line.dose().repetitions()).isBetween(0, 100);
                assertThat(line.dose().minutes()).isBetween(0, 240);
                assertThat(line.days()).isNotEmpty();
                assertThat(line.until().map(u -> !u.isBefore(line.from())).orElse(true))
                        .isTrue();
                assertThat(line.note().length()).isLessThanOrEqualTo(500);
            });
        }
    }

    @Property
    void everyProblemNamesALineThatIsThere(@ForAll("anyLines") List<ProgramLine> lines) {
        assertThat(ProgramRules.check(lines, LIBRARY)).allSatisfy(problem -> {
            assertThat(problem.field()).matches("lines\\[\\d\\]\\.[a-zA-Z]+");
            assertThat((Integer) problem.args().get(0)).isBetween(1, lines.size());
        });
    }

    @Property
    void aProgramDoesNotDifferFromItself(@ForAll("soundLines") List<ProgramLine> lines) {
        assertThat(ProgramDiff.between(lines, lines).isEmpty()).isTrue();
    }

    @Property
    void everyLineOfBothVersionsStandsInTheDifferenceOnce(
            @ForAll("soundLines") List<ProgramLine> before, @ForAll("soundLines") List<ProgramLine> after) {
        var diff = ProgramDiff.between(before, after);
        assertThat(diff.lines().stream().flatMap(l -> l.before().stream()).toList())
                .containsExactlyInAnyOrderElementsOf(before);
        assertThat(diff.lines().stream().flatMap(l -> l.after().stream()).toList())
                .containsExactlyElementsOf(after);
    }

    @Property
    void equalExactlyWhenNothingDiffers(
            @ForAll("soundLines") List<ProgramLine> before, @ForAll("soundLines") List<ProgramLine> after) {
        assertThat(ProgramDiff.between(before, after).isEmpty()).isEqualTo(before.equals(after));
    }

    @Property
    void movingOneLineMovesOneLine(@ForAll("soundLines") List<ProgramLine> lines, @ForAll long seed) {
        var distinct = lines.stream()
                .collect(java.util.stream.Collectors.toMap(
                        ProgramLine::exercise, l -> l, (a, b) -> a, java.util.LinkedHashMap::new))
                .values()
                .stream()
                .toList();
        if (distinct.size() < 2) {
            return;
        }
        var after = new ArrayList<>(distinct);
        var random = new Random(seed);
        after.add(random.nextInt(distinct.size() - 1), after.remove(distinct.size() - 1));
        assertThat(ProgramDiff.between(distinct, after).lines().stream().filter(LineDiff::moved))
                .hasSize(1);
    }

    @Property
    void adherenceStaysBetweenNoneAndAll(@ForAll("sessions") List<Session> sessions) {
        var adherence = Adherence.of(sessions);
        adherence.percent().ifPresent(percent -> assertThat(percent).isBetween(0.0, 100.0));
        assertThat(adherence.done()
                        + adherence.some()
                        + adherence.excused()
                        + adherence.notDone()
                        + adherence.notReported())
                .isEqualTo(adherence.planned());
    }

    @Property
    void extraSessionsDoNotMoveAdherence(
            @ForAll("sessions") List<Session> sessions, @ForAll @IntRange(max = 20) int extra) {
        var more = new ArrayList<>(sessions);
        more.addAll(Collections.nCopies(extra, new Session(false, Said.DONE)));
        assertThat(Adherence.of(more).percent())
                .isEqualTo(Adherence.of(sessions).percent());
    }

    @Property
    void anExcusedSessionMoreNeverLowersAdherence(@ForAll("sessions") List<Session> sessions) {
        var more = new ArrayList<>(sessions);
        more.add(new Session(true, Said.EXCUSED));
        assertThat(Adherence.of(more).percent())
                .isEqualTo(Adherence.of(sessions).percent());
    }

    @Property
    void aDayHoldsTheLinesOfTheLastVersionThatHasBegun(
            @ForAll("versions") List<Dated> versions, @ForAll @IntRange(min = -12, max = 12) int offset) {
        var day = Lines.DAY.plusDays(offset);
        var plan = WeekSchedule.days(versions, day, 1).get(0);
        var begun = versions.stream().filter(v -> !v.effective().isAfter(day)).toList();
        var lines = begun.isEmpty()
                ? List.<ProgramLine>of()
                : begun.get(begun.size() - 1).lines();
        assertThat(plan.lines())
                .isEqualTo(lines.stream().filter(l -> l.isOn(day)).toList());
    }

    @Property
    void aLaterVersionLeavesEarlierDaysAsTheyWere(
            @ForAll("versions") List<Dated> versions, @ForAll("soundLines") List<ProgramLine> lines) {
        var later = new ArrayList<>(versions);
        later.add(new Dated(versions.size() + 1, Lines.DAY, lines));
        assertThat(WeekSchedule.days(later, Lines.DAY.minusDays(14), 14))
                .isEqualTo(WeekSchedule.days(versions, Lines.DAY.minusDays(14), 14));
    }
}
