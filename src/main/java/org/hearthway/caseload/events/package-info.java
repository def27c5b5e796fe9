/** What happened in {@code caseload}, told to whoever listens inside the same transaction. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.caseload.events;
