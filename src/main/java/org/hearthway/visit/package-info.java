/** Visits: booked, confirmed, asked to move, moved, cancelled. */
@org.jspecify.annotations.NullMarked
package org.hearthway.visit;
