/** What a child wears and uses: serial casts, splints, walkers, frames and chairs, with the days on which each is looked at. */
@org.jspecify.annotations.NullMarked
package org.hearthway.equipment;
