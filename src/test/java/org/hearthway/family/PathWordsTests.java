package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.base.Language.EN;
import static org.hearthway.base.Language.ES;
import static org.hearthway.family.Samples.THURSDAY;
import static org.hearthway.family.Samples.reader;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.network.Span;
import org.hearthway.testing.PlanSamples;
import org.junit.jupiter.api.Test;

/** Dates as the family reads them. */
class PathWordsTests {

    @Test
    void leaveOutTheYearThatWeAreIn() {
        assertThat(PathWords.date(reader(EN), LocalDate.of(2026, 7, 30))).isEqualTo("July 30");
        assertThat(PathWords.date(reader(ES), LocalDate.of(2026, 7, 30))).isEqualTo("30 de julio");
    }

    @Test
    void nameAnotherYear() {
        assertThat(PathWords.date(reader(EN), LocalDate.of(2027, 1, 14))).isEqualTo("January 14, 2027");
        assertThat(PathWords.date(reader(ES), LocalDate.of(2027, 1, 14))).isEqualTo("14 de enero de 2027");
    }

    @Test
    void sayOfNewsWhenTheLastVisitWas() {
        assertThat(NewsStrip.since(reader(EN), THURSDAY)).isEqualTo("New today:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(1))).isEqualTo("New since yesterday:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(2))).isEqualTo("New since Tuesday:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(7))).isEqualTo("New since March 5:");
        assertThat(NewsStrip.since(reader(ES), THURSDAY.minusDays(2))).isEqualTo("Nuevo desde el martes:");
    }

    private static Planned stage(
            Plan.State state, Plan.Origin origin, LocalDate first, LocalDate start, LocalDate last) {
        var plan = PlanSamples.plan(
                "sdr", PlanSamples.stage("check", Bilingual.same("Check")), state, THURSDAY, start, start);
        var made = plan.stages().get(0);
        var why = made.why();
        return new Planned(
                made.stage(),
                1,
                state,
                Plan.Said.NOTHING,
                first,
                start,
                Optional.of(last),
                start,
                new Span(first, last),
                new Plan.Why(
                        origin,
                        why.from(),
                        why.base(),
                        why.rule(),
                        why.shiftedFrom(),
                        why.away(),
                        why.outside(),
                        why.counted(),
                        why.own(),
                        why.pushed()),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static Planned ahead(String first, String start, String last) {
        return stage(
                Plan.State.TO_COME,
                Plan.Origin.RULE,
                LocalDate.parse(first),
                LocalDate.parse(start),
                LocalDate.parse(last));
    }

    private static Planned given(String day) {
        var date = LocalDate.parse(day);
        return stage(Plan.State.TO_COME, Plan.Origin.SET_BY_HAND, date.minusDays(9), date, date.plusDays(9));
    }

    private static void says(Planned stage, String english, String spanish) {
        assertThat(PathWords.when(reader(EN), stage)).isEqualTo(english);
        assertThat(PathWords.when(reader(ES), stage)).isEqualTo(spanish);
    }

    @Test
    void nameTheWeekdayOfADayThatStandsAndTheYearOnlyOfAnother() {
        says(given("2026-04-14"), "on Tuesday, April 14", "el martes, 14 de abril");
        says(given("2027-01-14"), "on Thursday, January 14, 2027", "el jueves, 14 de enero de 2027");
        says(ahead("2026-04-14", "2026-04-14", "2026-04-14"), "on Tuesday, April 14", "el martes, 14 de abril");
    }

    @Test
    void sayBetweenWhileNoDayStandsAndTheYearOnce() {
        says(
                ahead("2026-04-23", "2026-04-30", "2026-05-07"),
                "between April 23 and May 7",
                "entre el 23 de abril y el 7 de mayo");
        var december = reader(EN, LocalDate.of(2026, 12, 10).atTime(9, 0));
        assertThat(PathWords.when(december, ahead("2026-12-20", "2026-12-30", "2027-01-08")))
                .isEqualTo("between December 20 and January 8, 2027");
        assertThat(PathWords.when(december, ahead("2027-01-03", "2027-01-09", "2027-01-20")))
                .isEqualTo("between January 3 and January 20, 2027");
        var january = reader(ES, LocalDate.of(2027, 1, 2).atTime(9, 0));
        assertThat(PathWords.when(january, ahead("2026-12-20", "2027-01-05", "2027-01-08")))
                .isEqualTo("entre el 2 de enero y el 8 de enero");
    }

    @Test
    void tellAFarDayByItsMonthUnlessItStands() {
        // 180 days on it is September 8
        says(
                ahead("2026-08-30", "2026-09-08", "2026-09-20"),
                "between August 30 and September 20",
                "entre el 30 de agosto y el 20 de septiembre");
        says(ahead("2026-08-30", "2026-09-09", "2026-09-20"), "about September", "hacia septiembre");
        says(ahead("2027-03-01", "2027-03-12", "2027-04-20"), "about March 2027", "hacia marzo de 2027");
        says(given("2027-03-12"), "on Friday, March 12, 2027", "el viernes, 12 de marzo de 2027");
    }

    @Test
    void tellManyDaysByTheMonthInWhichItIsPlanned() {
        says(
                ahead("2026-04-23", "2026-05-30", "2026-07-24"),
                "between April 23 and July 24",
                "entre el 23 de abril y el 24 de julio");
        says(ahead("2026-04-23", "2026-05-30", "2026-07-25"), "about May", "hacia mayo");
    }

    @Test
    void sayOfAStageThatGoesOnBesideThePresentOneSinceWhen() {
        var began = ahead("2026-01-12", "2026-01-12", "2026-01-12");
        assertThat(PathWords.when(reader(EN), lasting(began, Plan.State.PAST, "2026-05-12")))
                .isEqualTo("Since January 12, until about May 12");
        assertThat(PathWords.when(reader(ES), lasting(began, Plan.State.PAST, "2027-05-12")))
                .isEqualTo("Desde el 12 de enero, hasta mayo de 2027 más o menos");
        assertThat(PathWords.when(reader(EN), lasting(began, Plan.State.PAST, "2026-03-11")))
                .isEqualTo("January 12 to March 11");
    }

    private static Planned lasting(Planned stage, Plan.State state, String end) {
        return new Planned(
                stage.stage(),
                1,
                state,
                Plan.Said.NOTHING,
                stage.earliest(),
                stage.start(),
                stage.latest(),
                LocalDate.parse(end),
                stage.possible(),
                stage.why(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    @Test
    void sayWhenAStageWasAcrossTheTurnOfTheYear() {
        var january = reader(EN, LocalDate.of(2027, 1, 12).atTime(9, 0));
        var was = lasting(ahead("2026-12-28", "2026-12-28", "2026-12-28"), Plan.State.PAST, "2027-01-04");
        assertThat(PathWords.when(january, was)).isEqualTo("December 28, 2026 to January 4");
    }
}
