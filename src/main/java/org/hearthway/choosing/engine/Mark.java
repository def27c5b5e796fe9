package org.hearthway.choosing.engine;

/** What a line says about a path. None weighs more than another, and nobody counts them. */
public enum Mark {
    /** Speaks for it. */
    FOR,
    /** Speaks against it. */
    AGAINST,
    /** A fact is missing, so nothing can be said. */
    MISSING,
    /** To be talked about. */
    TALK
}
