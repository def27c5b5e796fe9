package org.hearthway.parts;

import org.hearthway.base.Viewer;

/** A number beside a place in the top bar: how much waits there. Implemented by the feature that knows. */
public interface Tally {

    /** The place, as its address is written, for instance {@code staff/needs}. */
    String place();

    /** How much waits there for this person. */
    int count(Viewer.Person viewer);
}
