package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.path.engine.Paths.EVERY_DAY;
import static org.hearthway.path.engine.Paths.after;
import static org.hearthway.path.engine.Paths.begins;
import static org.hearthway.path.engine.Paths.begun;
import static org.hearthway.path.engine.Paths.day;
import static org.hearthway.path.engine.Paths.path;
import static org.hearthway.path.engine.Paths.stage;
import static org.hearthway.path.engine.Paths.start;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Template.Edge;
import org.junit.jupiter.api.Test;

/** How stages end, and what that does to the stages behind them. */
class OutcomeTests {

    private static final LocalDate TODAY = day("2026-03-12");

    @Test
    void anOutcomeOpensSkipsAndEndsWhatComesAfter() {
        var works = outcome("works", Set.of(), Set.of(), false);
        var none = outcome("no-response", Set.of(), Set.of(), true);
        var again = outcome("once-more", Set.of("second-trial"), Set.of("talk"), false);
        var template = path(
                stage("tests", begins()),
                Paths.with(stage("trial", after("tests", "P4W")), works, none, again),
                optional("second-trial", after("trial", "P2W")),
                stage("talk", after("trial", "P3W")),
                stage("operation", after("trial", "P8W")));
        assertThat(ids(template, Map.of())).containsExactly("tests", "trial", "talk", "operation");
        assertThat(ids(template, Map.of("trial", new Course.Ended("no-response", TODAY))))
                .containsExactly("tests", "trial");
        assertThat(ids(template, Map.of("trial", new Course.Ended("once-more", TODAY))))
                .containsExactly("tests", "trial", "second-trial", "operation");
    }

    private static Template.Outcome outcome(String id, Set<String> opens, Set<String> skips, boolean ends) {
        return new Template.Outcome(id, Bilingual.same(id), Optional.empty(), opens, skips, ends, Optional.empty());
    }

    private static Template.Stage optional(String id, Template.After begins) {
        return stage(
                id,
                new Template.Timing(
                        List.of(begins),
                        Template.Length.about(Period.ZERO),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        false,
                        true,
                        Optional.empty(),
                        List.of()));
    }

    private static List<String> ids(Template template, Map<String, Course.Ended> ended) {
        var course = Course.begun(day("2026-02-01")).withEnded(ended);
        return Paths.plan(template, course, EVERY_DAY, TODAY).stages().stream()
                .map(planned -> planned.stage().id())
                .toList();
    }

    /** An approval that nobody has given holds what follows back, and lets it go when it is there. */
    @Test
    void waitsForAnOutcomeThatIsNotKnown() {
        var yes = outcome("yes", Set.of(), Set.of(), false);
        var no = outcome("no", Set.of(), Set.of(), true);
        var funding =
                Paths.with(stage("funding", begins(), Period.ofWeeks(4), Optional.empty(), false, false), yes, no);
        var template = path(funding, stage("operation", after("funding", Edge.END, "P1W", "P6W", "P12W")));
        var waiting = Paths.plan(template, begun("2026-01-05"), EVERY_DAY, TODAY);
        assertThat(waiting.stage("funding").orElseThrow().end()).isEqualTo(TODAY);
        assertThat(start(waiting, "operation")).isEqualTo(TODAY.plusWeeks(6));
        var given = begun("2026-01-05").withEnded(Map.of("funding", new Course.Ended("yes", day("2026-03-01"))));
        assertThat(start(Paths.plan(template, given, EVERY_DAY, TODAY), "operation"))
                .isEqualTo(day("2026-04-12"));
    }

    /** A trial of two days that ended on a day began about two days before, whatever the rule had planned. */
    @Test
    void aStageThatTheClinicDatesBeganItsUsualLengthBeforeItEnded() {
        var template = path(
                stage("tests", begins()),
                Paths.with(
                        stage("trial", after("tests", "P4W"), Period.ofDays(2), Optional.empty(), false, true),
                        outcome("works", Set.of(), Set.of(), false),
                        outcome("no-response", Set.of(), Set.of(), true)),
                stage("talk", after("trial", "P3W")));
        var ended = begun("2026-01-05").withEnded(Map.of("trial", new Course.Ended("works", day("2026-03-10"))));
        var plan = Paths.plan(template, ended, EVERY_DAY, TODAY);
        assertThat(start(plan, "trial")).isEqualTo(day("2026-03-08"));
        assertThat(plan.clashes()).isEmpty();
        assertThat(start(plan, "talk")).isEqualTo(day("2026-03-29"));
    }

    @Test
    void nothingIsNowOnAPathThatIsOver() {
        var template = path(
                stage("tests", begins()),
                Paths.with(stage("trial", after("tests", "P4W")), outcome("no-response", Set.of(), Set.of(), true)));
        var ended = begun("2026-01-05").withEnded(Map.of("trial", new Course.Ended("no-response", day("2026-03-10"))));
        assertThat(Paths.plan(template, ended, EVERY_DAY, TODAY).now()).isEmpty();
        assertThat(Paths.plan(template, ended, EVERY_DAY, day("2026-03-10")).now())
                .isPresent();
    }
}
