/** What others may hear of the clinic's own settings. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("events")
package org.hearthway.clinic.events;
