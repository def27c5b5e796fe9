/** Reads the clinic's settings and holidays, and guards which database belongs to which clinic. */
@org.jspecify.annotations.NullMarked
package org.hearthway.clinic.internal;
