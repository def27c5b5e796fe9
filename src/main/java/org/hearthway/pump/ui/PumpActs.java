package org.hearthway.pump.ui;

/** What the page of a pump can open for a person who may record. */
interface PumpActs {

    /** Opens the form for a refill. */
    void refill();

    /** Opens the form for a refill that was done elsewhere. */
    void elsewhere();

    /** Opens the form for another dosing or strength. */
    void change();

    /** Opens the form for the figures of pump and catheter. */
    void figures();

    /** Opens the second check of an entry. */
    void check(long number);

    /** Opens the form that supersedes an entry. */
    void correct(long number);
}
