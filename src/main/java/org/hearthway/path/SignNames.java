package org.hearthway.path;

import java.util.Set;

/** The signs that a stage may point to; a port, implemented where signs are kept. */
public interface SignNames {

    /** Identifiers of all signs; asked only after all content was read. */
    Set<String> names();
}
