package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.desk.DeskSamples.CHILD;
import static org.hearthway.desk.DeskSamples.NOW;
import static org.hearthway.desk.DeskSamples.message;
import static org.hearthway.desk.DeskSamples.visit;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthway.desk.Board.Case;
import org.hearthway.desk.Board.Group;
import org.hearthway.desk.Board.Row;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ComposerTests {

    private static final LocalDateTime NEXT_WEEK = LocalDateTime.of(2026, 3, 18, 9, 0);

    private static Board compose(List<Message> messages, Visit... visits) {
        return new Composer(NOW, 14, 7).compose(messages, List.of(visits), List.of());
    }

    private static Message about(String visit, State state) {
        return message("to " + visit + state, Optional.of(visit), state, NOW.minusSeconds(3_600));
    }

    @ParameterizedTest
    @CsvSource({"PLANNED,PLANNED", "HELD,HELD", "SENDING,SENDING", "RETRYING,RETRYING"})
    void aMessageThatIsToLeaveGoesOut(State state, Case says) {
        var board = compose(List.of(about("v", state)), visit("v", NEXT_WEEK, Answer.NONE));
        assertThat(board.rows()).extracting(Row::says).containsExactly(says);
        assertThat(board.rows().get(0).visit()).isPresent();
        assertThat(board.in(Group.GOING_OUT)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "SENT,ASKED",
        "MAY_HAVE_GONE_TWICE,MAY_HAVE_GONE_TWICE",
        "WRITTEN_TO_FOLDER,WRITTEN_TO_FOLDER",
        "CALLED,CALLED"
    })
    void aVisitWithoutAnAnswerWaits(State state, Case says) {
        var board = compose(List.of(about("v", state)), visit("v", NEXT_WEEK, Answer.NONE));
        assertThat(board.in(Group.WAITING)).extracting(Row::says).containsExactly(says);
    }

    @ParameterizedTest
    @CsvSource({"TO_CALL,TO_CALL", "NOT_REACHED,FAILED"})
    void aVisitThatAPersonMustCallAboutStandsOnce(State state, Case says) {
        var board = compose(List.of(about("v", State.SENT), about("v", state)), visit("v", NEXT_WEEK, Answer.NONE));
        assertThat(board.rows()).extracting(Row::says).containsExactly(says);
        assertThat(board.in(Group.NOT_REACHED)).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = State.class,
            names = {"SENT", "MAY_HAVE_GONE_TWICE", "WRITTEN_TO_FOLDER", "CALLED", "NOT_REACHED"})
    void aConfirmedVisitNeedsNothingMore(State state) {
        assertThat(compose(List.of(about("v", state)), visit("v", NEXT_WEEK, Answer.CONFIRMED))
                        .rows())
                .isEmpty();
    }

    @Test
    void aWishToMoveWaitsForTheClinicWhateverWasSent() {
        var messages = List.of(about("v", State.SENT), about("v", State.NOT_REACHED));
        var board = compose(messages, visit("v", NEXT_WEEK, Answer.ASKED_TO_MOVE));
        assertThat(board.rows()).extracting(Row::says).containsExactly(Case.ASKED_TO_MOVE);
    }

    @ParameterizedTest
    @EnumSource(Answer.class)
    void aCallStandsUntilTheOutboxTakesItBackWhateverTheAnswer(Answer answer) {
        var board = compose(List.of(about("v", State.TO_CALL)), visit("v", NEXT_WEEK, answer));
        assertThat(board.rows()).extracting(Row::says).containsExactly(Case.TO_CALL);
    }

    @Test
    void aSecondReminderGoesOutWhileTheFirstWaits() {
        var board =
                compose(List.of(about("v", State.SENT), about("v", State.PLANNED)), visit("v", NEXT_WEEK, Answer.NONE));
        assertThat(board.rows()).extracting(Row::says).containsExactly(Case.PLANNED, Case.ASKED);
    }

    @Test
    void theLastMessageThatWentIsShownWithAVisit() {
        var first = message("first", Optional.of("v"), State.SENT, NOW.minusSeconds(90_000));
        var second = message("second", Optional.of("v"), State.MAY_HAVE_GONE_TWICE, NOW.minusSeconds(600));
        var board = compose(List.of(second, first), visit("v", NEXT_WEEK, Answer.NONE));
        assertThat(board.rows()).extracting(Row::message).containsExactly(Optional.of(second));
    }

    @ParameterizedTest
    @CsvSource({"2026-03-26T09:00,1", "2026-03-26T11:00,0", "2026-04-26T09:00,0"})
    void aNearVisitThatNobodyWasAskedAboutIsNotReached(LocalDateTime start, int rows) {
        assertThat(compose(List.of(), visit("v", start, Answer.NONE)).in(Group.NOT_REACHED))
                .hasSize(rows);
    }

    @Test
    void aVisitThatIsOverAsksWhetherTheChildCame() {
        var board = compose(List.of(), visit("v", LocalDateTime.of(2026, 3, 12, 9, 0), Answer.CONFIRMED));
        assertThat(board.rows()).extracting(Row::says).containsExactly(Case.OVER);
    }

    @ParameterizedTest
    @EnumSource(
            value = Visit.State.class,
            names = {"ATTENDED", "NOT_ATTENDED", "CANCELLED"})
    void aSettledVisitIsGone(Visit.State state) {
        var start = LocalDateTime.of(2026, 3, 12, 8, 0);
        var settled = DeskSamples.visit("v", "check", start, Optional.empty(), Answer.NONE, state);
        assertThat(compose(List.of(about("v", State.SENT)), settled).rows()).isEmpty();
    }

    @Test
    void aMessageWithoutAVisitThatWentIsNoWork() {
        var sent = message("m", Optional.empty(), State.SENT, NOW);
        var failed = message("n", Optional.empty(), State.NOT_REACHED, NOW);
        assertThat(compose(List.of(sent, failed)).rows()).extracting(Row::says).containsExactly(Case.FAILED);
    }

    @Test
    void groupsFollowOneAnotherAndEachIsInTheOrderOfItsWork() {
        var later = message("later", Optional.empty(), State.PLANNED, NOW.plusSeconds(900));
        var sooner = message("sooner", Optional.empty(), State.PLANNED, NOW.plusSeconds(60));
        var gap = new Composer.Gap(
                CHILD, new Board.Wanted("p", "check", LocalDate.MIN, LocalDate.of(2026, 4, 1)), Optional.empty());
        var board = new Composer(NOW, 14, 7)
                .compose(
                        List.of(later, about("b", State.SENT), sooner, about("a", State.SENT)),
                        List.of(visit("b", NEXT_WEEK.plusDays(1), Answer.NONE), visit("a", NEXT_WEEK, Answer.NONE)),
                        List.of(gap));
        assertThat(board.rows())
                .extracting(Row::id)
                .containsExactly(
                        "message/" + sooner.id(),
                        "message/" + later.id(),
                        "visit/" + DeskSamples.id("a"),
                        "visit/" + DeskSamples.id("b"),
                        "book/" + CHILD + "/p");
    }

    @ParameterizedTest
    @CsvSource({"PLANNED,7,1", "PLANNED,8,0", "HELD,8,1", "RETRYING,8,1"})
    void whatIsPlannedForLaterDoesNotCrowdTheDay(State state, int days, int rows) {
        var later = message("later", Optional.empty(), state, NOW.plusSeconds(days * 86_400L));
        assertThat(compose(List.of(later)).rows()).hasSize(rows);
    }

    @Test
    void whatFailedIsWorkedOnce() {
        var first = message("first", Optional.of("v"), State.NOT_REACHED, NOW.minusSeconds(900));
        var second = message("second", Optional.of("v"), State.NOT_REACHED, NOW.minusSeconds(600));
        var call = message("call", Optional.of("v"), State.TO_CALL, NOW.minusSeconds(900));
        var visit = visit("v", NEXT_WEEK, Answer.NONE);
        assertThat(compose(List.of(first, second), visit).rows())
                .extracting(Row::message)
                .containsExactly(Optional.of(second));
        assertThat(compose(List.of(first, second, call), visit).rows())
                .extracting(Row::message)
                .containsExactly(Optional.of(call));
    }

    @Test
    void aCallCannotBeSent() {
        var mail = message("mail", Optional.empty(), State.PLANNED, NOW.plusSeconds(60));
        var call = message("call", Optional.empty(), State.TO_CALL, NOW);
        assertThat(compose(List.of(mail, call)).rows())
                .extracting(Row::isSendable)
                .containsExactly(true, false);
    }

    @Test
    void aMessagePlannedForLaterMeansThatSomebodyWillBeAsked() {
        var later = message("later", Optional.of("v"), State.PLANNED, NOW.plusSeconds(8 * 86_400L));
        assertThat(compose(List.of(later), visit("v", NEXT_WEEK.plusDays(5), Answer.NONE))
                        .rows())
                .isEmpty();
    }

    @Test
    void everyCaseStandsInOneGroup() {
        assertThat(Arrays.stream(Case.values()).map(Case::group)).doesNotContainNull();
    }
}
