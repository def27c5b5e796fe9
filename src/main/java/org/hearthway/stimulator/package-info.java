/** Brain stimulators in the body: readings, checked settings, the window for a new generator, the rhythm of charging. */
@org.jspecify.annotations.NullMarked
package org.hearthway.stimulator;
