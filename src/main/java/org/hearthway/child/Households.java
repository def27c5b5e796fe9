package org.hearthway.child;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Who cares for which child, and how far that reaches. */
public interface Households {

    /** How far a caregiver's reach goes. */
    enum Reach {
        /** Sees and acts: ticks, answers, reports. */
        FULL,
        /** Sees only. */
        VIEW_ONLY
    }

    /** One caregiver of one child. */
    record Caregiver(AccountId account, Reach reach) {}

    /** The caregivers of a child. */
    List<Caregiver> caregivers(Viewer viewer, ChildId child);

    /** The reach of an account to a child, for the access decision alone; tells nothing else and asks nobody. */
    Optional<Reach> reach(AccountId account, ChildId child);

    /**
     * Keeps the reach as it is until the caller's transaction ends, for the access decision alone: what was allowed is
     * done before the reach can end. Does nothing without a transaction that writes.
     */
    void hold(AccountId account, ChildId child);

    /** Whether there is such a child, for the access decision alone; tells nothing else and asks nobody. */
    boolean exists(ChildId child);

    /** Says that this account cares for this child. Saying it again changes the reach. */
    void link(Viewer viewer, ChildId child, AccountId account, Reach reach);

    /** Ends it; the next request of that caregiver is refused. */
    void unlink(Viewer viewer, ChildId child, AccountId account);
}
