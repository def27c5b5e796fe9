/** The folder's Medicines page: the list with its second checks, taper calendars, toxin sessions. */
@org.jspecify.annotations.NullMarked
package org.hearthway.medicine.ui;
