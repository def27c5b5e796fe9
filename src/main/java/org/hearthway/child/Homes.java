package org.hearthway.child;

import java.time.Instant;
import java.util.Map;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.engine.Nights;
import org.hearthway.child.engine.TwoHomes;

/** The homes of a child: what is known of each caregiver beside the account. */
public interface Homes {

    /** Whether a caregiver may decide for the child by law. Not known is said, never guessed. */
    enum Authority {
        YES,
        NO,
        NOT_KNOWN
    }

    /**
     * What is entered about a caregiver of a child.
     *
     * @param relation to the child, in words, 1 to 60 characters
     * @param authority whether this person may decide by law
     * @param address at most 300 characters, may be empty
     * @param interpreter language in which this person needs an interpreter, at most 60 characters; empty for none
     * @param nights the nights of the child with this person
     * @param sharesPhone whether this person lets the child's other caregivers see the telephone number
     * @param keptApart whether this person must not see how to reach the other caregivers, whatever they share
     * @param note for the team alone, at most 2000 characters, may be empty
     */
    record Home(
            String relation,
            Authority authority,
            String address,
            String interpreter,
            Nights nights,
            boolean sharesPhone,
            boolean keptApart,
            String note) {

        /** Nothing is known yet, and nobody sees anybody's telephone number. */
        public static final Home UNKNOWN = new Home("", Authority.NOT_KNOWN, "", "", Nights.NONE, false, false, "");
    }

    /**
     * What was entered last.
     *
     * @param number counts what was entered about this caregiver of this child, 0 for nothing yet
     * @param by tag of who entered it
     */
    record Entered(Home home, long number, String by, Instant at) {}

    /** What is known of the child's present caregivers, for the team; who has nothing entered is left out. */
    Map<AccountId, Entered> of(Viewer viewer, ChildId child);

    /** In which home the child sleeps, for all who see the family's pages; tells nothing else of a home. */
    TwoHomes nights(Viewer viewer, ChildId child);

    /**
     * Enters what is known of a caregiver.
     *
     * @param seen the number that the person saw
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     * @throws org.hearthway.base.NotAvailable when that account does not care for the child
     */
    void enter(Viewer viewer, ChildId child, AccountId caregiver, Home home, long seen);
}
