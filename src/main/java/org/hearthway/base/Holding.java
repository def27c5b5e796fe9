package org.hearthway.base;

import java.util.List;

/**
 * What is kept of a child in one or several tables, told for the moment at which two entries turn out to be one child.
 * Names of tables and columns are those of the migrations; nothing here was typed by a person.
 */
public sealed interface Holding {

    /** Short name, the end of the key of its words. */
    String name();

    /** The tables it speaks for. */
    List<Table> tables();

    /**
     * A table and its column that holds the child's identifier.
     *
     * @param name of the table
     * @param child name of the column
     */
    record Table(String name, String child) {}

    /**
     * Rows of their own, such as visits or reports: all of them move.
     *
     * @param key column by which a row is known, whatever child it is kept under; versions of one thing share it
     * @param naming text columns that carry the child's identifier within them; the first is unique, and a row whose
     *     name is taken stays where it is
     * @param follows the chain without which a row of such a name says nothing, or empty
     */
    record Rows(String name, Table table, String key, List<String> naming, String follows) implements Holding {

        public Rows {
            naming = List.copyOf(naming);
        }

        /** Rows that name no child but in the column for it. */
        public static Rows of(String name, String table, String child, String key) {
            return new Rows(name, new Table(table, child), key, List.of(), "");
        }

        @Override
        public List<Table> tables() {
            return List.of(table);
        }
    }

    /**
     * A chain of versions, such as a program: one of two chains goes on. Where the child that stays has none, the
     * other's moves as a whole; where both have one, the chain of the child that stays goes on and the other is kept
     * where it is.
     *
     * @param tables all with the same keys, what others refer to first
     * @param by further columns that name a chain, for instance the account
     * @param goesOn what matters when both have one
     * @param at column of the first table that says how new a link of the chain is
     */
    record Chain(String name, List<Table> tables, List<String> by, GoesOn goesOn, String at) implements Holding {

        public Chain {
            tables = List.copyOf(tables);
            by = List.copyOf(by);
        }

        /** A chain in one table. */
        public static Chain of(String table, String child, GoesOn goesOn, String at, String... by) {
            return new Chain(table.replace('_', '-'), List.of(new Table(table, child)), List.of(by), goesOn, at);
        }
    }

    /** Which of two chains may go on. */
    enum GoesOn {
        /** Only the newer one: an older dose or alarm date must not take its place. */
        THE_NEWER,
        /** That of the child that stays; the person is told. */
        OF_THE_ONE_THAT_STAYS,
        /** That of the child that stays, and nobody needs to be told. */
        SILENTLY
    }

    /**
     * A numbered chain whose newest link says whether something stands that must not be lost: the folding child's links
     * go behind the other's whenever it stands there. Nobody is told.
     *
     * @param number column of the number
     * @param stands condition on the newest link
     */
    record Kept(String name, Table table, String number, String stands) implements Holding {

        @Override
        public List<Table> tables() {
            return List.of(table);
        }
    }
}
