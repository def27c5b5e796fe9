package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentReading;
import org.hearthway.path.engine.Calendar;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;
import org.hearthway.words.ReadingLevel;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PathKindTests {

    private final PathKind paths = ReadPaths.shipped();

    private Plan plan(String path, String operation) {
        var surgery = LocalDate.parse(operation);
        return Planner.plan(
                paths.find(path).orElseThrow(),
                Course.begun(surgery.minusWeeks(26))
                        .withGiven(Map.of("operation", new Course.Given(surgery, Origin.ACTUAL))),
                Calendar.of(Days.ALL, new Span(surgery.minusYears(2), surgery.plusYears(40))),
                surgery.plusDays(30));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sdr", "itb"})
    void everyShippedPathIsInOrderInsideItsRulesAndExplained(String path) {
        var plan = plan(path, "2026-02-10");
        assertThat(plan.outOfOrder()).isEmpty();
        assertThat(plan.stages()).allSatisfy(stage -> {
            assertThat(stage.why().outside()).as(stage.stage().id()).isFalse();
            assertThat(stage.stage().duties().family()).as(stage.stage().id()).isNotEmpty();
            assertThat(stage.stage().source()).isNotBlank();
        });
        assertThat(plan.now().orElseThrow().stage().id()).isEqualTo("home-weeks");
        assertThat(plan.stages().stream().filter(s -> s.stage().timing().signal()))
                .extracting(s -> s.stage().id())
                .contains("operation");
    }

    static Stream<Named<Template.Stage>> stages() {
        return ReadPaths.shipped().all().stream()
                .flatMap(path -> path.stages().stream().map(stage -> Named.of(path.id() + "/" + stage.id(), stage)));
    }

    /** Our own rule for family text: sixth grade or lower; a Fernández-Huerta ease of 80 or more reads as sixth grade. */
    @ParameterizedTest
    @MethodSource("stages")
    void readsAtSixthGradeOrLower(Template.Stage stage) {
        var texts = Stream.of(
                        Stream.of(stage.says(), stage.why()),
                        stage.duties().family().stream().map(Template.FamilyTask::does),
                        stage.outcomes().stream().flatMap(outcome -> outcome.tells().stream()),
                        stage.precautions().stream().map(Template.Precaution::says))
                .flatMap(all -> all)
                .toList();
        var english = texts.stream().map(Bilingual::en).collect(Collectors.joining(" "));
        var spanish = texts.stream().map(Bilingual::es).collect(Collectors.joining(" "));
        assertThat(ReadingLevel.english(english).fleschKincaidGrade()).isLessThanOrEqualTo(6.0);
        assertThat(ReadingLevel.spanish(spanish).fernandezHuertaEase()).isGreaterThanOrEqualTo(80);
    }

    /** Reference table SDR-W1 (longer variants): pool from three weeks, swimming from four, other rules end at six; reviews. */
    @Test
    void nerveRootSurgeryKeepsTheReferenceCalendar() {
        var plan = plan("sdr", "2026-02-10");
        var cares = plan.stage("operation").orElseThrow().precautions();
        assertThat(cares).allSatisfy(c -> assertThat(c.from()).isEqualTo(LocalDate.parse("2026-02-10")));
        var ends = cares.stream().collect(Collectors.toMap(c -> c.rule().tag(), Plan.Care::until));
        assertThat(ends)
                .containsEntry("pool", LocalDate.parse("2026-03-03"))
                .containsEntry("swimming", LocalDate.parse("2026-03-10"))
                .containsEntry("passive-hip-flexion-past-90", LocalDate.parse("2026-03-24"))
                .containsEntry("passive-trunk-twist", LocalDate.parse("2026-03-24"))
                .containsEntry("passive-trunk-side-bend", LocalDate.parse("2026-03-24"))
                .containsEntry("riding", LocalDate.parse("2026-03-24"))
                .containsEntry("contact-sport", LocalDate.parse("2026-03-24"))
                .containsEntry("electrical-stimulation", LocalDate.parse("2026-03-24"));
        assertThat(plan.stage("six-week-check").orElseThrow().start()).isEqualTo(LocalDate.parse("2026-03-24"));
        assertThat(plan.stage("three-month-review").orElseThrow().start()).isEqualTo(LocalDate.parse("2026-05-10"));
        assertThat(plan.stage("six-month-review").orElseThrow().start()).isEqualTo(LocalDate.parse("2026-08-10"));
        assertThat(plan.stage("twelve-month-review").orElseThrow().start()).isEqualTo(LocalDate.parse("2027-02-10"));
        assertThat(plan.stage("two-year-review").orElseThrow().start()).isEqualTo(LocalDate.parse("2028-02-10"));
    }

    /** SDR-11: the rule forbids a passive bend or twist; what the child does alone is not locked, and the text says so. */
    @Test
    void aPassiveRuleKeepsTheWordPassive() {
        for (var template : paths.all()) {
            for (var stage : template.stages()) {
                stage.precautions().stream()
                        .filter(p -> p.tag().startsWith("passive-"))
                        .forEach(rule -> {
                            assertThat(rule.says().en()).contains("passive");
                            assertThat(rule.says().es()).contains("pasivo");
                        });
            }
        }
    }

    /** One date for a refill, the pump's own: a path that planned another would stand against it. */
    @Test
    void noPathPlansRefills() {
        assertThat(paths.all())
                .flatMap(Template::stages)
                .flatMap(Template.Stage::visits)
                .extracting(Template.VisitNeed::kind)
                .doesNotContain("refill");
    }

    @Test
    void laysOutEveryTextOfAPathForTheOneWhoAcceptsIt() {
        assertThat(paths.familyTexts()).hasSameSizeAs(paths.all()).allSatisfy(text -> {
            var stages = paths.find(text.item().id()).orElseThrow().stages();
            assertThat(text.texts())
                    .containsAll(stages.stream().map(Template.Stage::why).toList());
            assertThat(text.texts())
                    .containsAll(stages.stream()
                            .flatMap(s -> s.duties().family().stream())
                            .map(Template.FamilyTask::does)
                            .toList());
        });
    }

    private static final String STAGE = """
              - id: first
                name: {en: First, es: Primera}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{earliest: P0D, usual: P0D, latest: P0D}]
                lasts: P1W
                why: {en: Because, es: Porque}
                source: common practice, no source
            """;

    private static String path(String more) {
        return """
            source: common practice, no source
            version: 1
            reviewed: {en: none, es: none}
            name: {en: Small path, es: Camino pequeño}
            stages:
            """ + STAGE.indent(0) + more.indent(0);
    }

    @Test
    void readsASmallPath() {
        var small = ReadPaths.kind();
        assertThat(ContentReading.text(small, "paths/small.yaml", path(""))).isEmpty();
        assertThat(small.find("small").orElseThrow().stages()).hasSize(1);
    }

    @Test
    void namesTheLineOfEveryMistakeAtOnce() {
        var lines = ContentReading.text(ReadPaths.kind(), "paths/small.yaml", path("""
              - id: second
                name: {en: Second}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{after: nowhere, earliest: P5W, usual: P4W, latest: P6W}]
                lasts: P1W
                until: first
                visits:
                  - {id: talk, kind: chat, after: P0D, within: P-1D}
                precautions:
                  - {tag: pool, forbids: yes, from: P2W, until: P1W, says: {en: No, es: No}, source: here}
                colour: red
                why: {en: Because, es: Porque}
                source: common practice, no source
            """));
        assertThat(lines)
                .hasSize(9)
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:15: \"es\" is missing"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:18: \"after\" is nowhere"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:18: \"usual\" is P4W"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:19: the stage has both"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:20: \"until\" names first"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:22: \"within\" is P-1D"))
                .anyMatch(
                        l -> l.startsWith("content/paths/small.yaml:22: \"kind\" is chat, expected one of adult-visit"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:24: \"until\" is P1W"))
                .anyMatch(l -> l.startsWith("content/paths/small.yaml:25: \"colour\" is not known here"));
    }

    @Test
    void refusesACountFromAnEndThatIsNotKnownYet() {
        var lines = ContentReading.text(ReadPaths.kind(), "paths/small.yaml", path("""
              - id: open
                name: {en: Open, es: Abierta}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{after: first, earliest: P1D, usual: P1D, latest: P1D}]
                until: last
                why: {en: Because, es: Porque}
                source: common practice, no source
              - id: last
                name: {en: Last, es: Última}
                says: {en: Says, es: Dice}
                who: nurse
                begins: [{after: open, edge: end, earliest: P1D, usual: P1D, latest: P1D}]
                lasts: P0D
                why: {en: Because, es: Porque}
                source: common practice, no source
            """));
        assertThat(lines)
                .singleElement()
                .asString()
                .contains("it counts from the end of open, which ends when another begins");
    }
}
