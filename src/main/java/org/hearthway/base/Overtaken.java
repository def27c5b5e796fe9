package org.hearthway.base;

/** Somebody else saved in between: the version that the person saw is no longer the latest. Nothing was changed. */
public class Overtaken extends RuntimeException {

    /** Says so; the caller reads the newest state itself. */
    public Overtaken() {
        super("saved by somebody else in between");
    }
}
