/** What happened in {@code equipment}, told to whoever listens inside the same transaction. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.equipment.events;
