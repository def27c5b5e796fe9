package org.hearthway.caseload;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Figure;

/**
 * The numbers at which a home program comes onto the list. What ships counts until an administrator says another one,
 * and again when that is taken back. Nothing is altered: each word is kept with its author and reason.
 */
public interface NeedFigures {

    /** Fewest characters of a reason. */
    int REASON_MIN = 3;

    /** Most characters of a reason. */
    int REASON_MAX = 500;

    /**
     * What was said of a number.
     *
     * @param figure which
     * @param before what counted before
     * @param number what the clinic said; empty when it took its number back
     * @param version counts the words about this number from 1
     */
    record Said(
            Figure figure,
            int before,
            Optional<Integer> number,
            String reason,
            AccountId by,
            Instant at,
            long version) {}

    /**
     * A number.
     *
     * @param shipped what ships
     * @param own the clinic's, while it counts
     * @param version of the last word about it, 0 for none
     */
    record Value(Figure figure, int shipped, Optional<Said> own, long version) {

        /** What counts. */
        public int counts() {
            return own.flatMap(Said::number).orElse(shipped);
        }
    }

    /** All numbers, rule by rule; for administrators. */
    List<Value> all(Viewer viewer);

    /** What was said of all of them, newest first; for administrators. */
    List<Said> history(Viewer viewer);

    /**
     * Says what counts in this clinic. The list follows within a minute.
     *
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody said another one in between
     */
    void say(Viewer viewer, Figure figure, int number, String reason, long seen);

    /**
     * Takes the clinic's number back: what ships counts again.
     *
     * @throws org.hearthway.base.Invalid when there is none, or at {@code reason}
     * @throws org.hearthway.base.Overtaken when somebody said another one in between
     */
    void takeBack(Viewer viewer, Figure figure, String reason, long seen);
}
