package org.hearthway.figure;

/** The pictures that the content holds. */
public interface Figures {

    /** Whether there is such a picture; known once all content has been read. */
    boolean has(String id);

    /** The pictures of that name, which are looked for when they are first asked for. */
    Figure named(String id);
}
