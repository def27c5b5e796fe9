package org.hearthway.base;

/** The answer to what does not exist and to what is not this viewer's: deliberately the same for both. */
public class NotAvailable extends RuntimeException {

    /** The one answer; carries nothing to learn from. */
    public NotAvailable() {
        super("not available");
    }
}
