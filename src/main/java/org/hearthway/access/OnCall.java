package org.hearthway.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;

/** Who of the team answers for what nobody took up: in which order, and how long each one has. */
public interface OnCall {

    /** Fewest minutes that a person has before the next one is told. */
    int LEAST_MINUTES = 5;

    /** Most minutes that a person has before the next one is told. */
    int MOST_MINUTES = 120;

    /** Most people of one order. */
    int MOST_PEOPLE = 12;

    /**
     * The order.
     *
     * @param minutes how long a person has before the next one is told, {@value #LEAST_MINUTES} to
     *     {@value #MOST_MINUTES}
     * @param office who is told in office hours, the first first; 1 to {@value #MOST_PEOPLE}, nobody twice
     * @param outside who is told outside them; the same bounds
     * @param missed who looks after visits that were missed again; empty while nobody is named
     */
    record Order(int minutes, List<AccountId> office, List<AccountId> outside, Optional<AccountId> missed) {
        public Order {
            office = List.copyOf(office);
            outside = List.copyOf(outside);
        }

        /** What stands before anybody has said anything: a quarter of an hour, and nobody. */
        public static Order unsaid() {
            return new Order(15, List.of(), List.of(), Optional.empty());
        }
    }

    /**
     * The order as it was said last.
     *
     * @param version counts what was said, 0 before anything was
     */
    record Kept(Order order, Optional<AccountId> saidBy, Optional<Instant> saidAt, long version) {}

    /** The present order; for administrators and the machine. */
    Kept now(Viewer viewer);

    /** Who may stand in an order: people of the team who may take up an item and can sign in, by name. */
    List<Account> able(Viewer viewer);

    /**
     * Says the order anew; earlier ones are kept.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else said it in between
     */
    void say(Viewer viewer, Order order, long seen);
}
