/** Keeps readings of stimulators and answers for them. */
@org.jspecify.annotations.NullMarked
package org.hearthway.stimulator.internal;
