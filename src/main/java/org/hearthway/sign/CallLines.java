package org.hearthway.sign;

import java.time.Instant;
import java.util.List;
import org.hearthway.base.Bilingual;

/** Whom a family calls, and how soon. These rows stand whatever content was accepted or not; asks nobody. */
public interface CallLines {

    /**
     * One number to call.
     *
     * @param urgency how soon
     * @param title how soon, in words
     * @param detail who answers and when
     * @param call the word "call" with the number
     * @param number as people write it
     * @param link as a telephone takes it, {@code tel:…}
     */
    record Line(Sign.Urgency urgency, Bilingual title, Bilingual detail, Bilingual call, String number, String link) {}

    /** The three numbers, most urgent first. */
    List<Line> lines();

    /**
     * One stretch of office hours.
     *
     * @param from its first moment
     * @param until the first moment after it
     * @param open what is said while it lasts
     * @param before what is said until it begins
     */
    record Opening(Instant from, Instant until, Bilingual open, Bilingual before) {

        /** What is said at a moment before its end. */
        public Bilingual at(Instant moment) {
            return moment.isBefore(from) ? before : open;
        }
    }

    /** Office hours of the next month that are not over yet, the first in time first. */
    List<Opening> openings();

    /**
     * What is said of the office now: open until when, or closed and when it opens, and that a sign that gets worse
     * means the urgent line.
     */
    Bilingual officeNow();
}
