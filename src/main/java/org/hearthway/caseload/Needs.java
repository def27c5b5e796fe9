package org.hearthway.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.RuleBook;

/**
 * What needs a look. An item leaves the list with an outcome, or because its cause is gone; never because somebody
 * has looked.
 */
public interface Needs {

    /**
     * An item.
     *
     * @param id identifier
     * @param child whose
     * @param cause why it is here
     * @param since when it came onto the list
     * @param owner who has taken it
     * @param seen who looked at it first
     * @param aside set aside until a day, with the reason; empty once that day has come
     * @param handed of a report that cannot wait: who on call was told, and what comes next
     * @param left how it left the list; empty while it is open
     * @param version the version that was read
     */
    record Item(
            UUID id,
            ChildId child,
            Cause cause,
            Instant since,
            Optional<Person> owner,
            Optional<Stamp> seen,
            Optional<Aside> aside,
            Optional<Handed> handed,
            Optional<Left> left,
            long version) {}

    /** A person of the team. */
    record Person(AccountId account, String name) {}

    /** Who and when. */
    record Stamp(Person by, Instant at) {}

    /** Out of sight until a day. */
    record Aside(LocalDate until, String reason) {}

    /** A person on call and since when the item is, or will be, with this person. */
    record Turn(Person with, Instant since) {}

    /**
     * The way of a report that cannot wait from one person on call to the next.
     *
     * @param told who was told, in order
     * @param next who is told next, and when; empty once somebody took it up or read it, or when nobody is on call
     * @param waits whether nobody has taken it up or read it
     * @param startedOver whether everybody in the order was told and it has started over
     */
    record Handed(List<Turn> told, Optional<Turn> next, boolean waits, boolean startedOver) {
        public Handed {
            told = List.copyOf(told);
        }

        /** With whom it is while it waits. */
        public Optional<Turn> at() {
            return waits && !told.isEmpty() ? Optional.of(told.get(told.size() - 1)) : Optional.empty();
        }
    }

    /** How an item left the list: by a person with an outcome, or by itself because its cause was gone. */
    record Left(Instant at, Optional<Person> by, Optional<Outcome> outcome, String words, Optional<Gone> gone) {}

    /** What came of it. */
    enum Outcome {
        /** Somebody spoke with the family. */
        SPOKE,
        /** The plan, the program or a visit was changed. */
        CHANGED,
        /** Somebody else takes care of it, named in the words. */
        HANDED_ON,
        /** Looked at; nothing is to be done. */
        NOTHING
    }

    /** Every open item, set aside or not: what cannot wait and nobody has first, then what cannot wait, then by due day. */
    List<Item> open(Viewer viewer);

    /** Items that left the list since the moment, newest first. */
    List<Item> left(Viewer viewer, Instant since);

    /** How items of this item's rule may be worked. */
    RuleBook.Conduct conduct(Item item);

    /**
     * Takes an item up: the viewer becomes its owner.
     *
     * @throws org.hearthway.base.Overtaken when somebody else worked it since the version seen
     */
    void take(Viewer viewer, UUID item, long seen);

    /** Says that the viewer has looked. A family's report is thereby read, and the family sees by whom and when. */
    void see(Viewer viewer, UUID item, long seen);

    /**
     * Sets an item aside.
     *
     * @param until the day it comes back: after today, within the rule's bound, for a refill not after its date
     * @param reason 3 to 500 characters
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    void setAside(Viewer viewer, UUID item, LocalDate until, String reason, long seen);

    /** Brings an item back that was set aside. */
    void resume(Viewer viewer, UUID item, long seen);

    /**
     * Closes an item. Whoever closes it has looked at it, see {@link #see}.
     *
     * @param words 3 to 500 characters
     * @throws org.hearthway.base.Invalid naming field and bound; also when only the end of its cause closes it
     */
    void close(Viewer viewer, UUID item, Outcome outcome, String words, long seen);
}
