/** The folder's Stimulator page: the battery with its window, a form for a reading, its second check, all readings. */
@org.jspecify.annotations.NullMarked
package org.hearthway.stimulator.ui;
