package org.hearthway.child;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households.Reach;

/**
 * Two entries that are one child. One stays and takes over what the other has; the other folds: it is listed nowhere
 * and its address leads to the one that stays. Nothing is lost, and all of it can be taken back.
 */
public interface Merges {

    /**
     * One kind of thing that the folding entry has.
     *
     * @param name of the kind, see {@link org.hearthway.base.Holding#name()}
     * @param moves how many of it move
     * @param staysBehind how many are kept with the folded entry, because the one that stays has its own
     */
    record Part(String name, long moves, long staysBehind) {}

    /** A caregiver of either entry, and how far the person reaches in each. */
    record Both(AccountId account, Optional<Reach> inTheOneThatStays, Optional<Reach> inTheOneThatFolds) {}

    /**
     * What would happen.
     *
     * @param hindrances why it may not be done; each says the way out
     */
    record Preview(Child stays, Child folds, List<Part> parts, List<Both> caregivers, List<Problem> hindrances) {

        public Preview {
            parts = List.copyOf(parts);
            caregivers = List.copyOf(caregivers);
            hindrances = List.copyOf(hindrances);
        }
    }

    /**
     * A merge that stands.
     *
     * @param stays the entry that took over
     * @param folded the entry that folded, as it was
     */
    record Merged(UUID id, ChildId stays, Child folded, AccountId by, Instant at, String reason) {}

    /** What would happen if the second entry were folded into the first. */
    Preview preview(Viewer viewer, ChildId stays, ChildId folds);

    /**
     * Does it.
     *
     * @param stays the entry that takes over, as in what was seen
     * @param seen what the person saw
     * @param reason 3 to 500 characters
     * @throws org.hearthway.base.Overtaken when by now something else would happen
     * @throws org.hearthway.base.Invalid when there is a hindrance, or no reason
     */
    void merge(Viewer viewer, ChildId stays, Preview seen, String reason);

    /** The merges that stand, newest first. */
    List<Merged> standing(Viewer viewer);

    /**
     * Takes a merge back: what moved moves back, and what came since stays with the child that stayed.
     *
     * @param reason 3 to 500 characters
     * @throws org.hearthway.base.Overtaken when it was taken back before
     * @throws org.hearthway.base.Invalid when no reason is given, or a later merge stands in the way
     */
    void takeBack(Viewer viewer, ChildId stays, UUID merge, String reason);

    /** The entry under which a folded one goes on; empty for one that was not folded. */
    Optional<ChildId> goesOnAs(Viewer viewer, ChildId folded);
}
