package org.hearthway.program;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.engine.week.MissedSessions.Why;

/**
 * What becomes of sessions of this week that were not done: nothing was said of them by the end of their day, or they could
 * not be. What hurt is never offered again. Offers are made only where the week was laid out, since only then is it known
 * which other days there are.
 */
public interface Missed {

    /**
     * A session that was missed, and what is offered.
     *
     * @param exercise what it was
     * @param line which line of the program, as the layout names it
     * @param day the day it was for
     * @param start its time, midnight when it had none
     * @param to where it can go; empty when it is better left out
     * @param why why it is better left out
     */
    record Offer(Exercise exercise, String line, LocalDate day, LocalTime start, Optional<To> to, Optional<Why> why) {}

    /**
     * Another time of the same week.
     *
     * @param timed whether the start says anything: weeks without times have days alone
     */
    record To(LocalDate day, LocalTime start, boolean timed) {}

    /** What is offered today, what can be moved first. */
    List<Offer> offers(Viewer viewer, ChildId child);

    /**
     * Moves a session as it was offered, in this week only.
     *
     * @param key made by who takes the offer, so that the same press sent twice counts once
     * @throws org.hearthway.base.Overtaken when it is no longer offered
     */
    void move(Viewer viewer, ChildId child, UUID key, Offer offer);

    /**
     * Takes a move back.
     *
     * @throws org.hearthway.base.Overtaken when its day is over or something was said of it
     */
    void takeBack(Viewer viewer, ChildId child, UUID key);
}
