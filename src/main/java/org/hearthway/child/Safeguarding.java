package org.hearthway.child;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * A flag on a child that only named staff know of. An administrator names them once, for all children: naming them
 * child by child would tell which child has a flag. Whoever is not named gets the same answer whether there is a flag
 * or not; it leaves no line in the trail, no item and no message. Who said what and when is kept with the flag.
 */
public interface Safeguarding {

    /**
     * What was said.
     *
     * @param raised whether the flag stands
     * @param words why, 1 to 2000 characters
     * @param number counts what was said of this child
     */
    record Flag(boolean raised, String words, AccountId by, Instant at, long number) {}

    /** Everything said of a child, newest first; for named staff. */
    List<Flag> of(Viewer viewer, ChildId child);

    /**
     * Raises the flag, or lowers it.
     *
     * @param seen the number that the person saw, 0 for nothing yet
     */
    void say(Viewer viewer, ChildId child, boolean raised, String words, long seen);

    /** Who is named; for administrators. */
    Set<AccountId> named(Viewer viewer);

    /** Names a person, or takes the name off; for administrators. It counts for staff alone. */
    void name(Viewer viewer, AccountId account, boolean named);

    /** Whether an account is named, for the access decision alone; tells nothing of a child and asks nobody. */
    boolean isNamed(AccountId account);
}
