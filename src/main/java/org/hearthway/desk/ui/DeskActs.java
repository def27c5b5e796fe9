package org.hearthway.desk.ui;

import java.time.LocalDateTime;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.desk.Board.Row;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;

/**
 * What the parts of the desk's screen can set off. What cannot be taken is refused with
 * {@link org.hearthway.base.Invalid}, so that a form keeps what was typed.
 */
interface DeskActs {

    /** Shows a row in the panel. */
    void open(Row row);

    /** Shows a row and goes to the first thing that can be done about it. */
    void begin(Row row);

    void leave();

    /** Reads the desk anew. */
    void refresh();

    /** Shows a form for a visit of any child. */
    void beginBooking();

    void choose(Row row, boolean chosen);

    void chooseUpTo(Row row);

    void chooseAll(boolean chosen);

    void send(List<Row> rows);

    void hold(List<Row> rows, boolean held);

    void called(Row row, boolean reached, String note);

    void saidYes(Visit visit);

    void move(Visit visit, LocalDateTime start);

    void cancel(Visit visit);

    void came(Visit visit, boolean came);

    void book(ChildId child, Visits.Booking booking);
}
