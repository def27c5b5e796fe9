/** What happened in {@code stimulator}, told to whoever listens inside the same transaction. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.stimulator.events;
