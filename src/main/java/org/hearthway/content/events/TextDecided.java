package org.hearthway.content.events;

import org.hearthway.base.Viewer;

/**
 * An administrator has accepted, sent back or reworded what families read.
 *
 * @param by on whose behalf
 * @param what a mark for the trail, and after a colon which text; holds none of its words
 */
public record TextDecided(Viewer by, String what) {}
