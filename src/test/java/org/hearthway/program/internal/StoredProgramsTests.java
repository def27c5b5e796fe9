package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.Programs;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.events.ProgramSaved;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.HostileStrings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

class StoredProgramsTests extends OnAProgram {

    @Autowired
    ProgramWords words;

    @Autowired
    ExerciseLibrary library;

    @Autowired
    JdbcClient jdbc;

    private static Draft draft(ProgramLine... lines) {
        return new Draft(TODAY, List.of(lines), "first steps");
    }

    private static ProgramLine bridge(int repetitions) {
        return Lines.with(Lines.line("bridge"), new Dose(2, repetitions, 5, 0, 1));
    }

    private List<Problem> problems(Draft draft) {
        return catchThrowableOfType(Invalid.class, () -> programs.save(therapist, child, draft, 0))
                .problems();
    }

    @Test
    void keepsEveryVersionAsItWasSaved() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        programs.save(therapist, child, draft(bridge(10), Lines.line("sit-to-stand")), 1);
        assertThat(programs.history(therapist, child))
                .extracting(Programs.Version::number)
                .containsExactly(2, 1);
        assertThat(programs.history(therapist, child).get(1).lines()).containsExactly(bridge(8));
        assertThat(programs.latest(therapist, child)).hasValueSatisfying(latest -> {
            assertThat(latest.lines()).containsExactly(bridge(10), Lines.line("sit-to-stand"));
            assertThat(latest.author()).isEqualTo(therapist.account());
            assertThat(latest.at()).isEqualTo(HearthwayTest.START);
        });
    }

    @Test
    void keepsTheWordToTheFamilyAndTellsItWithTheNews() {
        programs.save(therapist, child, new Draft(TODAY, List.of(bridge(8)), "first steps", " Well done. "), 0);
        assertThat(programs.latest(therapist, child).orElseThrow().toFamily()).isEqualTo("Well done.");
        var saved = (ProgramSaved) heard.changes.get(0);
        assertThat(saved.words().en())
                .isEqualTo("Your home program is ready: one exercise. Your team writes: “Well done.”");
        assertThat(saved.words().es()).endsWith("Su equipo escribe: «Well done.»");

        programs.keepDraft(therapist, child, new Draft(TODAY, List.of(), "", "Half a w"), 1);
        assertThat(programs.keptDraft(therapist, child).orElseThrow().draft().toFamily())
                .isEqualTo("Half a w");
    }

    @Test
    void refusesAWordToTheFamilyThatIsTooLong() {
        assertThat(problems(new Draft(TODAY, List.of(bridge(8)), "first steps", "a".repeat(401))))
                .extracting(Problem::field)
                .containsExactly("toFamily");
    }

    @Test
    void tellsNoMoreThanTheNewsHaveRoomFor() {
        var lines = new ArrayList<ProgramLine>();
        for (int i = 0; i < 4; i++) {
            lines.add(Lines.line("an-exercise-with-a-long-name".repeat(8) + i));
        }
        var told = words.told(List.of(bridge(8)), lines, "w".repeat(400));
        assertThat(told.en())
                .hasSizeLessThanOrEqualTo(1000)
                .contains("w".repeat(400))
                .contains("more");
        assertThat(told.es()).hasSizeLessThanOrEqualTo(1000).contains("w".repeat(400));
    }

    @Test
    void tellsTheFamilyWhatIsNewInBothLanguages() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        programs.save(therapist, child, draft(bridge(10)), 1);
        var saved = (ProgramSaved) heard.changes.get(1);
        assertThat(saved.version()).isEqualTo(2);
        assertThat(saved.words().en()).isEqualTo("Bridge is now 10 times. It was 8.");
        assertThat(saved.words().es()).isEqualTo("Puente: ahora 10 veces. Antes eran 8.");
    }

    @Test
    void tellsOfAFirstProgramHowMuchItIs() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        assertThat(((ProgramSaved) heard.changes.get(0)).words().en())
                .isEqualTo("Your home program is ready: one exercise.");
    }

    /** IN2. */
    @Test
    void refusesToSaveOnAVersionThatSomebodyElseHasOvertaken() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        programs.save(person("Therapist", Role.THERAPIST), child, draft(bridge(9)), 1);
        assertThatThrownBy(() -> programs.save(therapist, child, draft(bridge(10)), 1))
                .isInstanceOf(Overtaken.class);
        assertThat(programs.latest(therapist, child).orElseThrow().lines()).containsExactly(bridge(9));
    }

    /** IN1. */
    @Test
    void theLoserKeepsTheDraft() {
        programs.keepDraft(therapist, child, draft(bridge(10)), 0);
        programs.save(person("Therapist", Role.THERAPIST), child, draft(bridge(9)), 0);
        assertThatThrownBy(() -> programs.save(therapist, child, draft(bridge(10)), 0))
                .isInstanceOf(Overtaken.class);
        assertThat(programs.keptDraft(therapist, child))
                .hasValueSatisfying(kept -> assertThat(kept.draft()).isEqualTo(draft(bridge(10))));
    }

    @Test
    void refusesAVersionNumberAheadOfTheLatest() {
        assertThatThrownBy(() -> programs.save(therapist, child, draft(bridge(8)), 7))
                .isInstanceOf(Overtaken.class);
    }

    /**
     * IN1: A lost-update check in the manner of a register test: eight people save at once, each on the version just seen,
     * and every save that was acknowledged is one version, with the lines that this person saved.
     */
    @Test
    void ofManyWhoSaveAtOnceNothingAcknowledgedIsLost() throws Exception {
        saveAtOnce(8, 60);
    }

    /** IN1. */
    @Test
    @Tag("long")
    void ofVeryManyWhoSaveAtOnceNothingAcknowledgedIsLost() throws Exception {
        saveAtOnce(8, 2_000);
    }

    private void saveAtOnce(int writers, int attempts) throws Exception {
        var acknowledged = new AtomicInteger();
        var refused = new AtomicInteger();
        var pool = Executors.newFixedThreadPool(writers);
        try {
            var jobs = new ArrayList<Callable<List<Programs.Version>>>();
            for (int w = 0; w < writers; w++) {
                var writer = person("Therapist", Role.THERAPIST);
                jobs.add(() -> {
                    var mine = new ArrayList<Programs.Version>();
                    for (int i = 0; i < attempts; i++) {
                        var seen = programs.latest(writer, child)
                                .map(Programs.Version::number)
                                .orElse(0);
                        try {
                            mine.add(programs.save(writer, child, draft(bridge(1 + i)), seen));
                            acknowledged.incrementAndGet();
                        } catch (Overtaken somebodyWasFaster) {
                            refused.incrementAndGet();
                        }
                    }
                    return mine;
                });
            }
            var mine = new ArrayList<Programs.Version>();
            for (var future : pool.invokeAll(jobs)) {
                mine.addAll(future.get());
            }
            assertThat(acknowledged.get() + refused.get()).isEqualTo(writers * attempts);
            assertThat(programs.latest(therapist, child).orElseThrow().number()).isEqualTo(acknowledged.get());
            assertThat(programs.history(therapist, child)).containsExactlyInAnyOrderElementsOf(mine);
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void namesLineFieldAndBoundOfWhatItRefuses() {
        assertThat(problems(draft(bridge(8), bridge(10_000))))
                .contains(Problem.at("lines[1].repetitions", "program.problem.repetitions", 2, 1, 100));
        assertThat(problems(draft(bridge(0)))).extracting(Problem::field).containsExactly("lines[0].repetitions");
        assertThat(problems(draft(Lines.line("moon-walk"))))
                .extracting(Problem::field)
                .containsExactly("lines[0].exercise");
        assertThat(problems(draft(Lines.between(bridge(8), TODAY, TODAY.minusDays(1)))))
                .extracting(Problem::field)
                .containsExactly("lines[0].until");
        assertThat(problems(draft(Lines.with(bridge(8), "x".repeat(10_000)))))
                .extracting(Problem::field)
                .containsExactly("lines[0].note");
        assertThat(problems(new Draft(TODAY.minusDays(1), List.of(), "reason")))
                .extracting(Problem::field)
                .containsExactly("effective");
        assertThat(problems(new Draft(TODAY, List.of(), " ")))
                .extracting(Problem::field)
                .containsExactly("reason");
        assertThat(programs.latest(therapist, child)).isEmpty();
    }

    /** 03:30 UTC on March 13 is still the evening of March 12 at the clinic. */
    @Test
    void todayIsTheClinicsToday() {
        clock.set(java.time.Instant.parse("2026-03-13T03:30:00Z"));
        assertThat(programs.save(therapist, child, draft(bridge(8)), 0).number())
                .isEqualTo(1);
    }

    @Test
    void aScriptInANoteIsTextAndComesBackAsItWas() {
        for (var hostile : HostileStrings.all().toList()) {
            var line = Lines.with(bridge(8), hostile.substring(0, Math.min(500, hostile.length())));
            var other = ChildId.random();
            programs.save(therapist, other, draft(line), 0);
            assertThat(programs.latest(therapist, other).orElseThrow().lines()).containsExactly(line);
        }
    }

    /** Reference values, EX-12 and SDR-W1: operation on February 10, 2026, no passive twist until March 24. */
    @Test
    void anExerciseThatTheStageForbidsIsLockedUntilItsDay() {
        var until = LocalDate.of(2026, 3, 24);
        path.rule("passive-trunk-twist", true, LocalDate.of(2026, 2, 10), until);
        var rolling = Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH);
        assertThat(problems(draft(bridge(8), rolling)))
                .extracting(Problem::field)
                .containsExactly("lines[1].from");
        var later = ProgramLine.of(
                rolling.exercise(), rolling.dose(), rolling.side(), rolling.days(), until, rolling.until(), "");
        assertThat(programs.save(therapist, child, draft(bridge(8), later), 0).number())
                .isEqualTo(1);
    }

    @Test
    void aRuleThatOnlyWarnsIsTold() {
        path.rule("hamstring-stretch", false, TODAY, TODAY.plusDays(3));
        var stretch = Lines.with(Lines.line("hamstring-helper"), ProgramLine.Side.EACH);
        var draft = draft(bridge(8), stretch);
        assertThat(programs.cautions(therapist, child, draft))
                .extracting(Programs.Caution::line)
                .containsExactly(1);
        assertThat(programs.save(therapist, child, draft, 0).number()).isEqualTo(1);
    }

    @Test
    void keepsOneDraftAPersonAndChildAndLetsItGoWhenSaved() {
        programs.keepDraft(therapist, child, draft(bridge(8)), 0);
        programs.keepDraft(therapist, child, new Draft(TODAY, List.of(bridge(10_000)), ""), 0);
        assertThat(programs.keptDraft(therapist, child)).hasValueSatisfying(kept -> {
            assertThat(kept.draft().lines()).containsExactly(bridge(10_000));
            assertThat(kept.at()).isEqualTo(HearthwayTest.START);
        });
        assertThat(programs.keptDraft(person("Therapist", Role.THERAPIST), child))
                .isEmpty();
        programs.save(therapist, child, draft(bridge(9)), 0);
        assertThat(programs.keptDraft(therapist, child)).isEmpty();
        programs.keepDraft(therapist, child, draft(bridge(8)), 1);
        programs.dropDraft(therapist, child);
        assertThat(programs.keptDraft(therapist, child)).isEmpty();
    }

    @Test
    void whatCannotBeToldIsNotSaved() {
        heard.failing = true;
        assertThatThrownBy(() -> programs.save(therapist, child, draft(bridge(8)), 0))
                .isInstanceOf(IllegalStateException.class);
        assertThat(programs.latest(therapist, child)).isEmpty();
    }

    @Test
    void asksTheGateForEachThing() {
        gate.deny(Action.SEE_FAMILY_PAGES);
        assertThatThrownBy(() -> programs.latest(therapist, child)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FOLDER);
        assertThatThrownBy(() -> programs.history(therapist, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> programs.cautions(therapist, child, draft())).isInstanceOf(NotAvailable.class);
        gate.deny(Action.CHANGE_PROGRAM);
        assertThatThrownBy(() -> programs.save(therapist, child, draft(), 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> programs.keepDraft(therapist, child, draft(), 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> programs.keptDraft(therapist, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> programs.dropDraft(therapist, child)).isInstanceOf(NotAvailable.class);
    }

    /** What a program was before it could say more than dose, side and days stays as it was. */
    @Test
    void aRowOfTheFirstFormatIsALineOnFixedDaysAgainstNothingButTheBody() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        jdbc.sql("update program_version set body = :body where child = :child")
                .param("body", """
                        {"format":1,"lines":[{"exercise":"clam","dose":{"sets":2,"repetitions":8,"holdSeconds":0,
                        "minutes":0,"timesADay":1},"side":"EACH","days":["MONDAY","FRIDAY"],"from":"2026-03-12",
                        "note":"slowly"}]}""")
                .param("child", child.value())
                .update();
        assertThat(programs.latest(therapist, child).orElseThrow().lines())
                .containsExactly(ProgramLine.of(
                        "clam",
                        new Dose(2, 8, 0, 0, 1),
                        ProgramLine.Side.EACH,
                        EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                        TODAY,
                        Optional.empty(),
                        "slowly"));
    }

    @Test
    void everythingThatAPrescriptionSaysComesBack() {
        var first = full(new Load.Weight(1500), new Rhythm(3, Rhythm.Spread.NOT_FOLLOWING), "bridge");
        var second = full(new Load.Band(2), new Rhythm(7, Rhythm.Spread.DAILY), "sit-to-stand");
        programs.save(therapist, child, draft(first, second), 0);
        programs.keepDraft(therapist, child, draft(second, first), 1);
        assertThat(programs.latest(therapist, child).orElseThrow().lines()).containsExactly(first, second);
        assertThat(programs.keptDraft(therapist, child).orElseThrow().draft().lines())
                .containsExactly(second, first);
    }

    private static ProgramLine full(Load load, Rhythm rhythm, String exercise) {
        return new ProgramLine(
                exercise,
                new Prescription(
                        new Dose(3, 10, 2, 0, 1),
                        Optional.of(60),
                        ProgramLine.Side.NONE,
                        load,
                        rhythm,
                        Optional.of(5),
                        Optional.of(new Progression(4, 5, 4, new Dose(3, 12, 2, 0, 1), load))),
                Lines.ALL_DAYS,
                TODAY,
                Optional.of(TODAY.plusDays(50)),
                "slowly",
                Priority.FIRST,
                "stronger than most",
                List.of());
    }

    @Test
    void tellsWhatElseIsNewInBothLanguages() {
        programs.save(therapist, child, draft(Lines.line("bridge")), 0);
        programs.save(
                therapist,
                child,
                draft(full(new Load.Weight(1500), new Rhythm(3, Rhythm.Spread.NOT_FOLLOWING), "bridge")),
                1);
        var line = programs.latest(therapist, child).orElseThrow().lines().get(0);
        var diff = ProgramDiff.between(List.of(Lines.line("bridge")), List.of(line));
        assertThat(words.differences(Language.EN, diff))
                .contains(
                        "Bridge: rest for 60 seconds between rounds now.",
                        "Bridge: now with 1,500 g.",
                        "Bridge: now 3 days a week, never two in a row. It was every day.",
                        "Bridge should feel about 5 out of 10 hard.",
                        "Bridge comes first when a week is full.");
        assertThat(words.differences(Language.ES, diff))
                .contains("Puente: ahora 3 días por semana, nunca dos seguidos. Antes: todos los días.");
        assertThat(words.days(Language.EN, Lines.with(line, EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY))))
                .isEqualTo("Mon and Fri");
    }

    /** Three days of which no two follow each other are not to be had between Monday and Wednesday. */
    @Test
    void aRhythmThatItsDaysCannotHoldIsRefused() {
        var line = full(new Load.Body(), new Rhythm(3, Rhythm.Spread.NOT_FOLLOWING), "bridge");
        var days = EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY);
        var tight = new ProgramLine(
                line.exercise(),
                line.prescription(),
                days,
                line.from(),
                line.until(),
                "",
                line.priority(),
                "",
                List.of());
        assertThat(problems(draft(tight)))
                .containsExactly(Problem.at("lines[0].rhythm", "program.problem.rhythm", 1, 3, 2));
    }

    @Test
    void anExerciseWhoseFileIsGoneGoesOnWithItsLastText() {
        programs.save(therapist, child, draft(Lines.with(Lines.line("clam"), ProgramLine.Side.EACH)), 0);
        jdbc.sql(
                        "update kept_exercise set exercise = 'shell', body = replace(body, '\"id\":\"clam\"', '\"id\":\"shell\"')"
                                + " where exercise = 'clam'")
                .update();
        jdbc.sql("update program_version set body = replace(body, '\"clam\"', '\"shell\"') where child = :child")
                .param("child", child.value())
                .update();
        assertThat(library.isGone("shell")).isTrue();
        assertThat(library.find("shell").orElseThrow().name())
                .isEqualTo(library.find("clam").orElseThrow().name());
        assertThat(library.find("shell").orElseThrow().steps())
                .isEqualTo(library.find("clam").orElseThrow().steps());
        var shell = Lines.with(Lines.line("shell"), ProgramLine.Side.EACH);
        assertThat(programs.save(therapist, child, draft(bridge(8), shell), 1).number())
                .as("it stays in the program that has it")
                .isEqualTo(2);
        var other = ChildId.random();
        assertThat(catchThrowableOfType(Invalid.class, () -> programs.save(therapist, other, draft(shell), 0))
                        .problems())
                .as("nobody gets it anew")
                .extracting(Problem::field)
                .containsExactly("lines[0].exercise");
    }

    @Test
    void aDoseOutsideWhatIsUsualAsksForAReasonOnce() {
        var many = ProgramLine.of(
                "bridge",
                new Dose(9, 50, 0, 0, 1),
                ProgramLine.Side.NONE,
                EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY),
                TODAY,
                Optional.empty(),
                "");
        assertThat(problems(draft(many))).extracting(Problem::field).containsExactly("lines[0].beyond");
        var because = new ProgramLine(
                many.exercise(),
                many.prescription(),
                many.days(),
                many.from(),
                many.until(),
                many.note(),
                many.priority(),
                "swims in a squad",
                List.of());
        programs.save(therapist, child, draft(because), 0);
        assertThat(programs.save(therapist, child, draft(Lines.line("sit-to-stand"), many), 1)
                        .number())
                .as("the same dose is not asked about anew")
                .isEqualTo(2);
    }

    @Test
    void leaveFromARuleIsGivenByWhoMayAndHoldsForThatRuleAlone() {
        var operation = LocalDate.of(2026, 2, 10);
        var until = LocalDate.of(2026, 3, 24);
        path.rule("passive-trunk-twist", true, operation, until);
        var rolling = Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH);
        var free = leave(rolling, new Excepted("passive-trunk-twist", operation, until, "healed, seen today"));
        gate.deny(Action.LIFT_PRECAUTION);
        assertThat(problems(draft(free)))
                .containsExactly(Problem.at("lines[0].exceptions", "program.problem.leave", 1));
        gate.deny();
        programs.save(therapist, child, draft(free), 0);
        gate.deny(Action.LIFT_PRECAUTION);
        assertThat(programs.save(therapist, child, draft(bridge(8), free), 1).number())
                .as("leave that was given stays with its exercise")
                .isEqualTo(2);
        assertThat(programs.cautions(therapist, child, draft(free))).hasSize(1).noneMatch(Programs.Caution::isLocked);
        path.none();
        path.rule("passive-trunk-twist", true, operation.plusDays(1), until);
        assertThat(programs.cautions(therapist, child, draft(free)))
                .as("a rule that begins later was not meant")
                .allMatch(Programs.Caution::isLocked);
    }

    @Test
    void leaveThatEndsBeforeTheRuleLocksTheDaysAfterIt() {
        var until = LocalDate.of(2026, 3, 24);
        path.rule("passive-trunk-twist", true, TODAY, until);
        var rolling = Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH);
        var early = leave(rolling, new Excepted("passive-trunk-twist", TODAY, until.minusDays(1), "for two weeks"));
        assertThat(problems(draft(early))).extracting(Problem::key).containsExactly("program.problem.locked");
        var none = leave(rolling, new Excepted("passive-trunk-twist", TODAY, until, " "));
        assertThat(problems(draft(none))).extracting(Problem::key).containsExactly("program.problem.exception");
    }

    private static ProgramLine leave(ProgramLine line, Excepted leave) {
        return new ProgramLine(
                line.exercise(),
                line.prescription(),
                line.days(),
                line.from(),
                line.until(),
                line.note(),
                line.priority(),
                line.beyond(),
                List.of(leave));
    }

    @Test
    void aRowOfAnUnknownFormatIsNotGuessedAt() {
        programs.save(therapist, child, draft(bridge(8)), 0);
        jdbc.sql("update program_version set body = '{\"format\":3,\"lines\":[]}' where child = :child")
                .param("child", child.value())
                .update();
        assertThatThrownBy(() -> programs.latest(therapist, child)).hasMessageContaining("unknown format");
    }

    @Test
    void aMachineSavesNoProgram() {
        assertThatThrownBy(
                        () -> programs.save(new Viewer.Machine(UUID.randomUUID().toString()), child, draft(), 0))
                .isInstanceOf(NotAvailable.class);
    }
}
