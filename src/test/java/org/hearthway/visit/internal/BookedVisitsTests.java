package org.hearthway.visit.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.mockito.Mockito.mock;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.hearthway.base.Action;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentReading;
import org.hearthway.path.Plans;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visit.State;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.hearthway.visit.Visits.Booking;
import org.hearthway.visit.events.VisitAnswered;
import org.hearthway.visit.events.VisitAttended;
import org.hearthway.visit.events.VisitBooked;
import org.hearthway.visit.events.VisitCancelled;
import org.hearthway.visit.events.VisitMoved;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(BookedVisitsTests.Setting.class)
class BookedVisitsTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.visit.internal")
    static class Setting {
        /** No child is on a path here. */
        @Bean
        Plans plans() {
            return mock();
        }

        @Bean
        Heard heard() {
            return new Heard();
        }
    }

    /** Hears what visits tell; may throw, as a listener does that cannot keep its part. */
    static class Heard {
        final List<Change> changes = new ArrayList<>();
        boolean failing;

        @EventListener
        void on(Change change) {
            if (failing) {
                throw new IllegalStateException("cannot keep it");
            }
            changes.add(change);
        }
    }

    private static final Viewer OFFICE = new Viewer.Machine("test");
    private static final LocalDateTime TUESDAY = LocalDateTime.of(2026, 3, 17, 10, 30);

    @Autowired
    private Visits visits;

    @Autowired
    private SettableClock clock;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Heard heard;

    @Autowired
    private JdbcClient db;

    private final ChildId child = ChildId.random();

    @BeforeEach
    void beginAgain(@Autowired VisitKinds kinds) {
        ContentReading.shipped(kinds);
        clock.set(HearthwayTest.START);
        gate.deny();
        heard.changes.clear();
        heard.failing = false;
    }

    private VisitId book(String kind, LocalDateTime start) {
        return visits.book(OFFICE, child, new Booking(kind, start, 45, " Room 2 ", Optional.empty()));
    }

    private Visit get(VisitId id) {
        return visits.get(OFFICE, id);
    }

    @Test
    void booksAVisitAtTheClinicsWallClockAndTellsTheFamily() {
        var visit = get(book("therapy", TUESDAY));
        assertThat(visit.start()).isEqualTo(TUESDAY);
        assertThat(visit.startsAt()).isEqualTo(Instant.parse("2026-03-17T14:30:00Z"));
        assertThat(visit.endsAt()).isEqualTo(Instant.parse("2026-03-17T15:15:00Z"));
        assertThat(visit.place()).isEqualTo("Room 2");
        assertThat(visit.answer()).isEqualTo(Answer.NONE);
        assertThat(visit.sequence()).isZero();
        var words = heard.changes.get(0).forFamily().orElseThrow();
        assertThat(heard.changes.get(0)).isInstanceOf(VisitBooked.class);
        assertThat(words.en()).isEqualTo("New date: Therapy visit, Tue, Mar 17 at 10:30 AM.");
        assertThat(words.es())
                .startsWith("Cita nueva el mar, 17 de mar., 10:30")
                .endsWith(": Visita de terapia.");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "a kind that is not known,     dance,   2026-03-17T10:30, 45,  visit.problem.kind",
        "a start in the past,          therapy, 2026-03-12T09:59, 45,  visit.problem.past",
        "a Saturday,                   therapy, 2026-03-14T10:30, 45,  visit.problem.closed",
        "a holiday,                    therapy, 2026-05-25T10:30, 45,  visit.problem.holiday",
        "a slip in the year,           therapy, 2062-03-17T10:30, 45,  visit.problem.far",
        "four minutes,                 therapy, 2026-03-17T10:30, 4,   visit.problem.minutes",
        "eight hours and one minute,   therapy, 2026-03-17T10:30, 481, visit.problem.minutes"
    })
    void refuses(String what, String kind, LocalDateTime start, int minutes, String key) {
        var booking = new Booking(kind, start, minutes, "", Optional.empty());
        var refused = catchThrowableOfType(Invalid.class, () -> visits.book(OFFICE, child, booking));
        assertThat(refused.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.key()).isEqualTo(key));
        assertThat(visits.upcoming(OFFICE, child)).isEmpty();
    }

    @Test
    void saysEverythingThatIsWrongAtOnce() {
        var booking = new Booking("dance", LocalDateTime.of(2020, 1, 1, 9, 0), 0, "x".repeat(201), Optional.empty());
        var refused = catchThrowableOfType(Invalid.class, () -> visits.book(OFFICE, child, booking));
        assertThat(refused.problems())
                .extracting(problem -> problem.field())
                .containsExactly("kind", "start", "minutes", "place");
    }

    @Test
    void fallsBackToNoAnswerWhenTheVisitMoves() {
        var id = book("therapy", TUESDAY);
        visits.confirm(OFFICE, id, 0);
        visits.move(OFFICE, id, TUESDAY.plusDays(1), get(id).version());
        var moved = get(id);
        assertThat(moved.answer()).isEqualTo(Answer.NONE);
        assertThat(moved.sequence()).isEqualTo(1);
        assertThat(moved.start()).isEqualTo(TUESDAY.plusDays(1));
        assertThat(heard.changes).hasExactlyElementsOfTypes(VisitBooked.class, VisitAnswered.class, VisitMoved.class);
    }

    @Test
    void doesNotConfirmATimeThatTheFamilyWasNotShown() {
        var id = book("therapy", TUESDAY);
        visits.move(OFFICE, id, TUESDAY.plusDays(1), get(id).version());
        assertThatThrownBy(() -> visits.confirm(OFFICE, id, 0)).isInstanceOf(Overtaken.class);
        assertThat(get(id).answer()).isEqualTo(Answer.NONE);
        visits.confirm(OFFICE, id, 1);
        assertThat(get(id).answer()).isEqualTo(Answer.CONFIRMED);
    }

    @Test
    void keepsTheOldSlotWhenTheFamilyAsksToMove() {
        var id = book("therapy", TUESDAY);
        visits.askToMove(OFFICE, id, 0, " Friday is better ");
        var visit = get(id);
        assertThat(visit.answer()).isEqualTo(Answer.ASKED_TO_MOVE);
        assertThat(visit.wish()).isEqualTo("Friday is better");
        assertThat(visit.start()).isEqualTo(TUESDAY);
        assertThat(visit.state()).isEqualTo(State.BOOKED);
        var tooLong = "x".repeat(501);
        assertThatThrownBy(() -> visits.askToMove(OFFICE, id, 0, tooLong)).isInstanceOf(Invalid.class);
        assertThat(get(id).wish()).isEqualTo("Friday is better");
    }

    @Test
    void takesTheSameAnswerTwiceAsOne() {
        var id = book("therapy", TUESDAY);
        visits.confirm(OFFICE, id, 0);
        visits.confirm(OFFICE, id, 0);
        assertThat(get(id).version()).isEqualTo(2);
        assertThat(heard.changes).hasExactlyElementsOfTypes(VisitBooked.class, VisitAnswered.class);
    }

    @Test
    void refusesAChangeToAVersionThatIsNoLongerTheLatest() {
        var id = book("therapy", TUESDAY);
        visits.confirm(OFFICE, id, 0);
        assertThatThrownBy(() -> visits.move(OFFICE, id, TUESDAY.plusDays(1), 1))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> visits.cancel(OFFICE, id, 1)).isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> visits.attended(OFFICE, id, true, 1)).isInstanceOf(Overtaken.class);
        assertThat(get(id).state()).isEqualTo(State.BOOKED);
    }

    @Test
    void takesNoAnswerOnceCancelledOrOver() {
        var cancelled = book("therapy", TUESDAY);
        visits.cancel(OFFICE, cancelled, 1);
        assertThatThrownBy(() -> visits.confirm(OFFICE, cancelled, 0)).isInstanceOf(Overtaken.class);
        var over = book("therapy", TUESDAY);
        clock.set(Instant.parse("2026-03-17T15:15:00Z"));
        assertThatThrownBy(() -> visits.confirm(OFFICE, over, 0)).isInstanceOf(Overtaken.class);
        assertThat(heard.changes).hasExactlyElementsOfTypes(VisitBooked.class, VisitCancelled.class, VisitBooked.class);
    }

    @Test
    void listsWhatIsToComeSoonestFirstAndWhatIsPastNewestFirst() {
        var later = book("review", TUESDAY.plusDays(7));
        var first = book("therapy", TUESDAY);
        var second = book("therapy", TUESDAY.plusDays(1));
        visits.cancel(OFFICE, book("orthotics", TUESDAY), 1);
        assertThat(visits.upcoming(OFFICE, child)).extracting(Visit::id).containsExactly(first, second, later);
        clock.set(Instant.parse("2026-03-20T12:00:00Z"));
        visits.attended(OFFICE, second, true, 1);
        assertThat(visits.upcoming(OFFICE, child)).extracting(Visit::id).containsExactly(later);
        assertThat(visits.past(OFFICE, child, 9)).extracting(Visit::id).containsExactly(second, first);
        assertThat(visits.past(OFFICE, child, 1)).extracting(Visit::id).containsExactly(second);
        assertThat(get(second).state()).isEqualTo(State.ATTENDED);
        assertThat(heard.changes).last().isInstanceOf(VisitAttended.class);
    }

    @Test
    void isStillToComeUntilItsLastMinute() {
        var id = book("therapy", TUESDAY);
        clock.set(Instant.parse("2026-03-17T15:14:59Z"));
        assertThat(visits.upcoming(OFFICE, child)).extracting(Visit::id).containsExactly(id);
        clock.advance(Duration.ofSeconds(1));
        assertThat(visits.upcoming(OFFICE, child)).isEmpty();
    }

    @Test
    void findsTheBookedVisitsOfASpanWithBothEnds() {
        var first = book("therapy", TUESDAY.withHour(0).withMinute(0));
        var last = book("therapy", TUESDAY.plusDays(2).withHour(23).withMinute(59));
        book("therapy", TUESDAY.plusDays(3).withHour(0).withMinute(0));
        assertThat(visits.between(OFFICE, LocalDate.of(2026, 3, 17), LocalDate.of(2026, 3, 19)))
                .extracting(Visit::id)
                .contains(first, last)
                .allSatisfy(id -> assertThat(get(id).start().toLocalDate()).isBefore(LocalDate.of(2026, 3, 20)));
    }

    @Test
    void asksTheGateBeforeEveryAnswer() {
        var id = book("therapy", TUESDAY);
        gate.deny(Action.values());
        var booking = new Booking("therapy", TUESDAY, 45, "", Optional.empty());
        assertThatThrownBy(() -> visits.upcoming(OFFICE, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.past(OFFICE, child, 3)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.between(OFFICE, LocalDate.EPOCH, LocalDate.EPOCH))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.get(OFFICE, id)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.book(OFFICE, child, booking)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.move(OFFICE, id, TUESDAY, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.cancel(OFFICE, id, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.attended(OFFICE, id, true, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.confirm(OFFICE, id, 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.askToMove(OFFICE, id, 0, "")).isInstanceOf(NotAvailable.class);
    }

    @Test
    void answersTheSameForAVisitThatDoesNotExist() {
        assertThatThrownBy(() -> visits.get(OFFICE, VisitId.random())).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> visits.confirm(OFFICE, VisitId.random(), 0)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void keepsNothingWhenAListenerCannotKeepItsPart() {
        heard.failing = true;
        assertThatThrownBy(() -> book("therapy", TUESDAY)).isInstanceOf(IllegalStateException.class);
        assertThat(visits.upcoming(OFFICE, child)).isEmpty();
        var rows = db.sql("select count(*) from visit where child = ?").param(child.value());
        assertThat(rows.query(Integer.class).single()).isZero();
    }

    @Test
    void letsOneOfTwoMovesAtOnceWin() throws Exception {
        var id = book("therapy", TUESDAY);
        var together = new CyclicBarrier(2);
        var outcomes = new ArrayList<Boolean>();
        var pool = Executors.newFixedThreadPool(2);
        try {
            Callable<Boolean> move = () -> {
                together.await();
                try {
                    visits.move(OFFICE, id, TUESDAY.plusDays(1), 1);
                    return true;
                } catch (Overtaken overtaken) {
                    return false;
                }
            };
            for (var done : pool.invokeAll(List.of(move, move))) {
                outcomes.add(done.get());
            }
        } finally {
            pool.shutdownNow();
        }
        assertThat(outcomes).containsExactlyInAnyOrder(true, false);
        assertThat(get(id).sequence()).isEqualTo(1);
    }
}
