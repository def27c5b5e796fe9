package org.hearthway.base;

import java.util.List;

/** What one feature keeps of a child. A port: each feature says its own, and a test finds a table that nobody named. */
public interface Holdings {

    /** All of it, in a fixed order. */
    List<Holding> all();
}
