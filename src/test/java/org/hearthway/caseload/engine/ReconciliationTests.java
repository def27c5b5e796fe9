package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.caseload.engine.Samples.TODAY;
import static org.hearthway.caseload.engine.Samples.homeDays;
import static org.hearthway.caseload.engine.Samples.logged;
import static org.hearthway.caseload.engine.Samples.refill;
import static org.hearthway.caseload.engine.Samples.rules;
import static org.hearthway.caseload.engine.Samples.silent;
import static org.hearthway.caseload.engine.Samples.unfilled;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReconciliationTests {

    private static final LocalDate BY = LocalDate.of(2026, 3, 24);
    private static final Facts SILENCE = homeDays(silent(9), silent(10), silent(11));

    private static Reconciliation between(Facts before, Facts after, LocalDate later) {
        var items = rules().causes(before, TODAY);
        return Reconciliation.of(items, Set.of(), rules().causes(after, later), after);
    }

    @Test
    void aCheckEndsBecauseItIsBookedRecordedOrNoLongerNear() {
        var by = LocalDate.of(2026, 4, 1);
        var stands = Samples.check(by, false);
        assertThat(between(stands, Samples.check(by, true), TODAY).ended()).containsValue(Gone.VISIT_BOOKED);
        assertThat(between(stands, Samples.check(by.plusMonths(6), false), TODAY)
                        .ended())
                .containsValue(Gone.CHECK_DATE_MOVED);
        assertThat(between(stands, stands, TODAY.minusDays(20)).ended()).containsValue(Gone.NOT_NEAR);
    }

    @Test
    void aSecondCheckEndsOnceItIsTypedAgainAndANewerVersionIsAnotherOne() {
        var at = TODAY.minusDays(5).atStartOfDay(Samples.ZONE).toInstant();
        var pump = Facts.Unconfirmed.What.PUMP;
        var stands = Samples.unconfirmed(new Facts.Unconfirmed(pump, "setting", 1, at));
        assertThat(between(stands, Facts.none(), TODAY).ended()).containsValue(Gone.TYPED_AGAIN);
        var newer = between(stands, Samples.unconfirmed(new Facts.Unconfirmed(pump, "setting", 2, at)), TODAY);
        assertThat(newer.ended()).containsKey("second-check/PUMP/setting/1");
        assertThat(newer.open()).extracting(Cause::key).containsExactly("second-check/PUMP/setting/2");
    }

    @Test
    void opensWhatIsNew() {
        assertThat(between(Facts.none(), SILENCE, TODAY).open()).hasSize(1);
    }

    @Test
    void doesNothingTwice() {
        assertThat(between(SILENCE, SILENCE, TODAY).isEmpty()).isTrue();
    }

    @Test
    void refreshesASilenceThatGrows() {
        var work = between(SILENCE, homeDays(silent(9), silent(10), silent(11), silent(12)), TODAY.plusDays(1));
        assertThat(work.open()).isEmpty();
        assertThat(work.refreshed()).extracting(Cause::count).containsExactly(4);
    }

    @Test
    void endsASilenceWhenTheFamilyLogs() {
        var work = between(SILENCE, homeDays(silent(9), silent(10), silent(11), logged(12)), TODAY);
        assertThat(work.ended()).containsValue(Gone.LOGGED_AGAIN);
    }

    @Test
    void endsASilenceWhenTheProgramNoLongerAsks() {
        assertThat(between(SILENCE, Facts.none(), TODAY).ended()).containsValue(Gone.PLAN_CHANGED);
    }

    @Test
    void endsAMissingRefillWhenItIsBooked() {
        assertThat(between(refill(BY, false), refill(BY, true), TODAY).ended()).containsValue(Gone.VISIT_BOOKED);
    }

    @Test
    void endsAMissingRefillWhenTheDateMovesAway() {
        assertThat(between(refill(BY, false), refill(BY.plusMonths(3), false), TODAY)
                        .ended())
                .containsValue(Gone.REFILL_DATE_MOVED);
    }

    @Test
    void endsAMissingRefillWhenThePumpIsOut() {
        assertThat(between(refill(BY, false), Facts.none(), TODAY).ended()).containsValue(Gone.DEVICE_CHANGED);
    }

    @Test
    void endsTheWaitForAFirstFillWithTheFillOrWithThePump() {
        var waits = unfilled(TODAY);
        assertThat(between(waits, refill(BY.plusMonths(3), false), TODAY).ended())
                .containsValue(Gone.FILL_RECORDED);
        assertThat(between(waits, Facts.none(), TODAY).ended()).containsValue(Gone.DEVICE_CHANGED);
    }

    @Test
    void comesBackWhenABookedRefillIsCancelled() {
        var stands = refill(BY, false);
        assertThat(Reconciliation.of(List.of(), Set.of(), rules().causes(stands, TODAY), stands)
                        .open())
                .hasSize(1);
    }

    @Test
    void doesNotBringBackWhatAPersonHasClosed() {
        var causes = rules().causes(SILENCE, TODAY);
        assertThat(Reconciliation.of(List.of(), Set.of("no-log"), causes, SILENCE)
                        .isEmpty())
                .isTrue();
    }
}
