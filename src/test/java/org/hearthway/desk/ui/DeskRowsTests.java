package org.hearthway.desk.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.desk.Board;
import org.hearthway.desk.Board.Case;
import org.hearthway.desk.Board.Row;
import org.hearthway.desk.DeskSamples;
import org.hearthway.reminder.Outbox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DeskRowsTests {

    private static final Row FIRST = row("first", Case.PLANNED);
    private static final Row SECOND = row("second", Case.HELD);
    private static final Row THIRD = row("third", Case.PLANNED);
    private static final Row ASKED = row("asked", Case.ASKED);
    private static final Row TO_CALL = row("call", Case.TO_CALL);

    private final DeskRows rows = new DeskRows();

    private static Row row(String id, Case says) {
        var state = says == Case.TO_CALL ? Outbox.State.TO_CALL : Outbox.State.PLANNED;
        return new Row(
                id,
                says,
                new ChildId(new UUID(0, 1)),
                Optional.of(DeskSamples.message(id, Optional.empty(), state, DeskSamples.NOW)),
                Optional.empty(),
                Optional.empty());
    }

    private static Board board(Row... rows) {
        return new Board(Arrays.asList(rows));
    }

    private List<String> chosen() {
        return rows.chosen().stream().map(Row::id).toList();
    }

    @BeforeEach
    void aDesk() {
        rows.read(board(FIRST, SECOND, THIRD, ASKED, TO_CALL));
    }

    @Test
    void showsOneListOrAll() {
        assertThat(rows.shown()).hasSize(5);
        rows.show(DeskShow.GOING_OUT, Optional.empty());
        assertThat(rows.shown()).containsExactly(FIRST, SECOND, THIRD);
        assertThat(rows.count(DeskShow.WAITING)).isEqualTo(1);
    }

    @Test
    void aRowThatTheListDoesNotHoldIsShownAmongAll() {
        rows.show(DeskShow.GOING_OUT, Optional.of(ASKED));
        assertThat(rows.show()).isEqualTo(DeskShow.ALL);
        assertThat(rows.settle(Optional.empty())).contains(ASKED);
    }

    @Test
    void staysAtTheRowAtHandAndGoesToTheNextWhenItIsGone() {
        rows.show(DeskShow.GOING_OUT, Optional.of(FIRST));
        assertThat(rows.settle(Optional.of(SECOND))).contains(FIRST);

        // it was sent: it stands in another list now
        rows.read(board(SECOND, THIRD, row("first", Case.ASKED)));
        assertThat(rows.settle(Optional.of(SECOND))).contains(SECOND);

        rows.read(board(THIRD));
        assertThat(rows.settle(Optional.empty())).contains(THIRD);
        rows.read(board());
        assertThat(rows.settle(Optional.empty())).isEmpty();
    }

    @Test
    void theNextAfterTheLastIsTheLast() {
        assertThat(rows.after(FIRST)).isEqualTo(SECOND);
        assertThat(rows.after(TO_CALL)).isEqualTo(TO_CALL);
    }

    @Test
    void ticksUpToARowOnlyWhatCanBeSent() {
        rows.choose(FIRST, true);
        rows.chooseUpTo(THIRD);
        assertThat(chosen()).containsExactly("first", "second", "third");
        rows.choose(SECOND, false);
        assertThat(chosen()).containsExactly("first", "third");
        rows.chooseAll(true);
        assertThat(chosen()).containsExactly("first", "second", "third");
        rows.chooseAll(false);
        assertThat(chosen()).isEmpty();
    }

    @Test
    void aTickFallsAwayWithWhatCanNoLongerBeSent() {
        rows.chooseAll(true);
        rows.read(board(FIRST, row("second", Case.ASKED)));
        assertThat(chosen()).containsExactly("first");
    }
}
