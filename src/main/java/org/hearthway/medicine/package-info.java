/** Medicines alongside the path: the list, taper calendars as signed, toxin sessions. Nothing about a dose is computed. */
@org.jspecify.annotations.NullMarked
package org.hearthway.medicine;
