/** Keeps medicines, taper calendars and toxin sessions, and answers for them. */
@org.jspecify.annotations.NullMarked
package org.hearthway.medicine.internal;
