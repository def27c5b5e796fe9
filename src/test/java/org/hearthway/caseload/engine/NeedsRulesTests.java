package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.caseload.engine.Samples.TODAY;
import static org.hearthway.caseload.engine.Samples.check;
import static org.hearthway.caseload.engine.Samples.homeDays;
import static org.hearthway.caseload.engine.Samples.logged;
import static org.hearthway.caseload.engine.Samples.refill;
import static org.hearthway.caseload.engine.Samples.rules;
import static org.hearthway.caseload.engine.Samples.silent;
import static org.hearthway.caseload.engine.Samples.unfilled;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedsRulesTests {

    private static Facts pain(int pain, String at) {
        var fact = new Facts.Pain(new UUID(0, 1), "calf-stretch", TODAY, pain, Instant.parse(at));
        return new Facts(List.of(), List.of(fact), List.of(), Optional.empty(), List.of(), List.of(), Optional.empty());
    }

    private static Facts report(Urgency urgency, String at) {
        var fact = new Facts.Report(new UUID(0, 2), urgency, Instant.parse(at));
        return new Facts(List.of(fact), List.of(), List.of(), Optional.empty(), List.of(), List.of(), Optional.empty());
    }

    private static Cause only(Facts facts) {
        return rules().causes(facts, TODAY).get(0);
    }

    @Test
    void findsNothingInNothing() {
        assertThat(rules().causes(Facts.none(), TODAY)).isEmpty();
    }

    @Nested
    class Pain {

        /** Severe from 7 on a 0 to 10 scale: common practice, no source. */
        @ParameterizedTest
        @CsvSource({"0,0", "6,0", "7,1", "8,1", "10,1"})
        void needsALookFromSeven(int pain, int causes) {
            assertThat(rules().causes(pain(pain, "2026-03-12T14:00:00Z"), TODAY))
                    .hasSize(causes);
        }

        @Test
        void tellsHowMuchInWhichExerciseOnWhichDay() {
            var cause = only(pain(8, "2026-03-12T14:00:00Z"));
            assertThat(cause.count()).isEqualTo(8);
            assertThat(cause.subject()).isEqualTo("calf-stretch");
            assertThat(cause.day()).isEqualTo(TODAY);
        }

        @Test
        void isDueOnTheSameDayWhileTheOfficeIsOpen() {
            assertThat(only(pain(8, "2026-03-12T20:29:00Z")).dueDay()).isEqualTo(TODAY);
        }

        @Test
        void isDueOnTheNextOpenDayOnceTheOfficeHasClosed() {
            assertThat(only(pain(8, "2026-03-12T20:30:00Z")).dueDay()).isEqualTo("2026-03-13");
        }

        @Test
        void isDueOnMondayWhenLoggedOnAFridayNight() {
            assertThat(only(pain(8, "2026-03-14T01:00:00Z")).dueDay()).isEqualTo("2026-03-16");
        }
    }

    @Nested
    class ReportedSign {

        @ParameterizedTest
        @CsvSource({"NOW,2026-03-12T14:15:00Z", "URGENT,2026-03-12T15:00:00Z"})
        void hasAClockWhenItCannotWait(Urgency urgency, Instant due) {
            var cause = only(report(urgency, "2026-03-12T14:00:00Z"));
            assertThat(cause.dueAt()).contains(due);
            assertThat(cause.dueDay()).isEqualTo(TODAY);
        }

        @Test
        void keepsItsClockAtNight() {
            var cause = only(report(Urgency.NOW, "2026-03-14T04:50:00Z"));
            assertThat(cause.dueAt()).contains(Instant.parse("2026-03-14T05:05:00Z"));
            assertThat(cause.dueDay()).as("past midnight at the clinic").isEqualTo("2026-03-14");
        }

        @Test
        void waitsForOfficeHoursWhenTheOfficeLineWasTheOneToCall() {
            var cause = only(report(Urgency.HOURS, "2026-03-13T21:00:00Z"));
            assertThat(cause.dueAt()).isEmpty();
            assertThat(cause.dueDay()).isEqualTo("2026-03-16");
        }

        @Test
        void isDueOneOpenDayLaterWhenItIsANote() {
            assertThat(only(report(Urgency.NOTE, "2026-03-13T14:00:00Z")).dueDay())
                    .isEqualTo("2026-03-16");
        }
    }

    @Nested
    class Check {

        @ParameterizedTest
        @CsvSource({
            "2026-04-10,false,0", // 29 days ahead
            "2026-04-09,false,1", // 28
            "2026-04-09,true,0",
            "2025-03-01,false,1", // long past: still here
            "2025-03-01,true,0"
        })
        void needsALookFromFourWeeksBeforeUnlessBooked(LocalDate by, boolean booked, int causes) {
            assertThat(rules().causes(check(by, booked), TODAY)).hasSize(causes);
        }

        @Test
        void thatIsLateIsWorkedWithWhatIsDueTodayAndKeepsItsDay() {
            var late = only(check(LocalDate.of(2025, 3, 1), false));
            assertThat(late.dueDay()).isEqualTo(TODAY);
            assertThat(late.day()).isEqualTo("2025-03-01");
            assertThat(late.key()).isEqualTo("check/HIPS/2025-03-01");
        }
    }

    @Nested
    class SecondCheck {

        private Facts written(String at) {
            return Samples.unconfirmed(
                    new Facts.Unconfirmed(Facts.Unconfirmed.What.MEDICINE, "m", 2, Instant.parse(at)));
        }

        /** Today is Thursday, March 12; the office closes at 16:30. One open day is the usual time of this book. */
        @ParameterizedTest
        @CsvSource({
            "2026-03-12T13:00:00Z,0", // written this morning
            "2026-03-11T20:31:00Z,0", // yesterday after the office closed counts from today
            "2026-03-11T20:29:00Z,1",
            "2026-03-02T14:00:00Z,1"
        })
        void needsALookOnceItWaitsLongerThanUsual(String at, int causes) {
            assertThat(rules().causes(written(at), TODAY)).hasSize(causes);
        }

        @Test
        void overTheWeekendNobodyIsLate() {
            var friday = written("2026-03-13T14:00:00Z");
            assertThat(rules().causes(friday, LocalDate.of(2026, 3, 15))).isEmpty();
            assertThat(rules().causes(friday, LocalDate.of(2026, 3, 16)))
                    .singleElement()
                    .satisfies(cause -> {
                        assertThat(cause.dueDay()).isEqualTo("2026-03-16");
                        assertThat(cause.day()).isEqualTo("2026-03-13");
                        assertThat(cause.key()).isEqualTo("second-check/MEDICINE/m/2");
                    });
        }
    }

    @Nested
    class Refill {

        @ParameterizedTest
        @CsvSource({
            "2026-03-27,false,0", // 15 days ahead
            "2026-03-26,false,1", // 14
            "2026-03-24,false,1",
            "2026-03-24,true,0",
            "2026-03-01,false,1" // past: still here
        })
        void needsALookFromFourteenDaysBeforeUnlessBooked(LocalDate by, boolean booked, int causes) {
            assertThat(rules().causes(refill(by, booked), TODAY)).hasSize(causes);
        }

        @Test
        void isDueOnTheRefillByDateItself() {
            var by = LocalDate.of(2026, 3, 24);
            assertThat(only(refill(by, false)).dueDay()).isEqualTo(by);
        }
    }

    @Nested
    class FirstFill {

        @Test
        void ofAPumpStandsFromTheFirstDayAndIsDueOneOpenDayLater() {
            // a Wednesday; the day after is open
            var cause = only(unfilled(LocalDate.of(2026, 3, 11)));
            assertThat(cause.rule()).isEqualTo(Rule.FIRST_FILL);
            assertThat(cause.day()).isEqualTo(LocalDate.of(2026, 3, 11));
            assertThat(cause.dueDay()).isEqualTo(LocalDate.of(2026, 3, 12));
        }

        @Test
        void ofANewerPumpIsAnotherCause() {
            assertThat(only(unfilled(LocalDate.of(2026, 3, 11))).key())
                    .isNotEqualTo(only(unfilled(LocalDate.of(2026, 3, 10))).key());
        }
    }

    @Nested
    class MissedVisits {

        private Facts.CriticalVisit visit(String kind, int day, boolean came) {
            var date = LocalDate.of(2026, 3, day);
            return new Facts.CriticalVisit(
                    kind + day,
                    kind,
                    date,
                    date.atTime(10, 0).atZone(Samples.ZONE).toInstant(),
                    came);
        }

        private List<Cause> causes(Facts.CriticalVisit... visits) {
            return rules().causes(
                            new Facts(
                                    List.of(),
                                    List.of(),
                                    List.of(),
                                    Optional.empty(),
                                    List.of(visits),
                                    List.of(),
                                    Optional.empty()),
                            TODAY);
        }

        @Test
        void needALookFromTheSecondInARow() {
            assertThat(causes(visit("refill", 3, false))).isEmpty();
            assertThat(causes(visit("refill", 3, false), visit("refill", 10, false)))
                    .singleElement()
                    .satisfies(cause -> {
                        assertThat(cause.rule()).isEqualTo(Rule.MISSED);
                        assertThat(cause.count()).isEqualTo(2);
                        assertThat(cause.subject()).isEqualTo("refill");
                        assertThat(cause.day()).isEqualTo("2026-03-10");
                        assertThat(cause.dueDay()).isEqualTo("2026-03-10");
                        assertThat(cause.key()).isEqualTo("missed/refill10");
                    });
        }

        @Test
        void beginAnewOnceTheChildCame() {
            assertThat(causes(visit("refill", 2, false), visit("refill", 3, true), visit("refill", 10, false)))
                    .isEmpty();
            assertThat(causes(visit("refill", 2, false), visit("refill", 3, false), visit("refill", 10, true)))
                    .isEmpty();
        }

        @Test
        void countForEachKindAlone() {
            assertThat(causes(visit("refill", 3, false), visit("wound-check", 10, false)))
                    .isEmpty();
        }

        @Test
        void missedOnceMoreIsANewReason() {
            var two = causes(visit("refill", 3, false), visit("refill", 5, false));
            var three = causes(visit("refill", 3, false), visit("refill", 5, false), visit("refill", 10, false));
            assertThat(three).singleElement().satisfies(cause -> {
                assertThat(cause.count()).isEqualTo(3);
                assertThat(cause.key()).isNotEqualTo(two.get(0).key());
            });
        }
    }

    @Nested
    class DaysWithoutALog {

        @Test
        void needALookFromThreePlannedDaysInARow() {
            var cause = only(homeDays(logged(6), silent(9), silent(10), silent(11)));
            assertThat(cause.rule()).isEqualTo(Rule.NO_LOG);
            assertThat(cause.count()).isEqualTo(3);
            assertThat(cause.day()).isEqualTo("2026-03-09");
            assertThat(cause.dueDay()).as("the open day after the third").isEqualTo("2026-03-12");
        }

        @Test
        void areFineAtTwo() {
            assertThat(rules().causes(homeDays(logged(9), silent(10), silent(11)), TODAY))
                    .isEmpty();
        }

        @Test
        void doNotCountTodayBeforeItIsOver() {
            assertThat(rules().causes(homeDays(silent(10), silent(11), silent(12)), TODAY))
                    .isEmpty();
        }

        @Test
        void endWithALogToday() {
            assertThat(rules().causes(homeDays(silent(9), silent(10), silent(11), logged(12)), TODAY))
                    .isEmpty();
        }

        @Test
        void endWithALogForALaterOfTheDays() {
            assertThat(rules().causes(homeDays(silent(8), silent(9), logged(10), silent(11)), TODAY))
                    .isEmpty();
        }

        @Test
        void keepTheirDueDayWhileTheyGrow() {
            var days = homeDays(silent(4), silent(5), silent(6), silent(9), silent(10), silent(11));
            assertThat(only(days).dueDay()).isEqualTo("2026-03-09");
        }

        @Test
        void startAnewAfterTheTeamHasAnswered() {
            var days = homeDays(silent(5), silent(6), silent(9), silent(10), silent(11))
                    .homeDays();
            var answered = new Facts(
                    List.of(),
                    List.of(),
                    days,
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    Optional.of(LocalDate.of(2026, 3, 9)));
            assertThat(rules().causes(answered, TODAY)).isEmpty();
            assertThat(rules().causes(answered, TODAY.plusDays(30))).isEmpty();
            var earlier = new Facts(
                    List.of(),
                    List.of(),
                    days,
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    Optional.of(LocalDate.of(2026, 3, 6)));
            assertThat(only(earlier).count()).isEqualTo(3);
            assertThat(only(earlier).key()).isNotEqualTo("no-log");
        }
    }

    @Nested
    class LateTasks {

        private static final AccountId NURSE = new AccountId(new UUID(0, 7));

        private static Facts task(int day, boolean ofTheFamily, Optional<AccountId> with) {
            return Samples.tasks(new Facts.OpenTask("t", LocalDate.of(2026, 3, day), ofTheFamily, with));
        }

        /** Bounds of the shipped content: a day for the team, three days for a family. */
        @Test
        void needALookSoManyDaysPastTheirDay() {
            assertThat(rules().causes(task(12, false, Optional.empty()), TODAY)).isEmpty();
            assertThat(only(task(11, false, Optional.empty())).rule()).isEqualTo(Rule.TASK);
            assertThat(rules().causes(task(10, true, Optional.empty()), TODAY)).isEmpty();
            assertThat(only(task(9, true, Optional.empty())).rule()).isEqualTo(Rule.TASK);
        }

        @Test
        void areDueOnTheOpenDayAfterThat() {
            // the Saturday after that Friday is no open day
            assertThat(only(task(6, false, Optional.empty())).dueDay()).isEqualTo("2026-03-09");
            assertThat(only(task(6, false, Optional.empty())).day()).isEqualTo("2026-03-06");
        }

        @Test
        void areAnotherReasonWithAnotherPerson() {
            assertThat(only(task(6, false, Optional.of(NURSE))).key())
                    .isNotEqualTo(only(task(6, false, Optional.empty())).key());
        }
    }
}
