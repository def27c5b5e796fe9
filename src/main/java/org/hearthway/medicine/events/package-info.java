/** What happened in {@code medicine}, told to whoever listens inside the same transaction. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.medicine.events;
