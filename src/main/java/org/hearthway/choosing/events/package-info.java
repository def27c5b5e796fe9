/** What happened in {@code choosing}, told to whoever listens inside the same transaction. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.choosing.events;
