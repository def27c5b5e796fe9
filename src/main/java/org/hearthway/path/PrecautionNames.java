package org.hearthway.path;

import java.util.Set;

/** The movements that a rule of care may forbid; a port, implemented where exercises are kept. */
public interface PrecautionNames {

    /** Tags that exercises carry; asked only after all content was read. */
    Set<String> names();
}
