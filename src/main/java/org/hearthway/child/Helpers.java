package org.hearthway.child;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * Who helps a child outside the clinic: a therapist nearby, an aide at school. A helper sees the program and the week
 * and logs sessions, nothing else, and that only until the last day.
 */
public interface Helpers {

    /** What the helper is to the child. */
    enum Kind {
        THERAPIST,
        SCHOOL_AIDE,
        OTHER
    }

    /** Which caregiver agreed, and on which day. */
    record Consent(AccountId by, LocalDate on) {}

    /**
     * What is said when somebody is asked to help.
     *
     * @param kind what the helper is to the child
     * @param lastDay the last day on which the helper sees anything, by the clinic's clock; at most a year ahead
     * @param consent a caregiver who acts for the child and does not lack the authority, on a day of the last year
     */
    record Help(Kind kind, LocalDate lastDay, Consent consent) {}

    /**
     * A helper of a child.
     *
     * @param number counts what was said of this helper and this child
     * @param by tag of who said it
     * @param over whether the helper's access is gone
     */
    record Helper(AccountId account, Help help, long number, String by, Instant at, boolean over) {}

    /** What a helper is shown of a child: what it is called, in which tone figures are drawn, nothing else. */
    record Glimpse(ChildId id, String name, int skinTone) {}

    /** Everybody who helps or helped, those who still do first; for the team and the family. */
    List<Helper> of(Viewer viewer, ChildId child);

    /** The child as a helper sees it. */
    Glimpse glimpse(Viewer viewer, ChildId child);

    /** The children whom this person helps today. */
    List<Glimpse> mine(Viewer.Person viewer);

    /** Keeps what was said of a helper as it is until the caller's transaction ends, see {@link Households#hold}. */
    void hold(AccountId account, ChildId child);

    /** Whether an account helps a child today, for the access decision alone; tells nothing else and asks nobody. */
    boolean reaches(AccountId account, ChildId child);

    /**
     * Says that this account helps this child until a day. Saying it again changes the day.
     *
     * @param seen the number that the person saw, 0 for nobody yet
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    void link(Viewer viewer, ChildId child, AccountId account, Help help, long seen);

    /** What is wrong with it, before an account is made for it. */
    void check(Viewer viewer, ChildId child, Help help);

    /** Ends it before its day; the next request of that helper is refused. */
    void end(Viewer viewer, ChildId child, AccountId account, long seen);
}
