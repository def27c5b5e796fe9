/** Keeps children and the reach of their caregivers in the database. */
@org.jspecify.annotations.NullMarked
package org.hearthway.child.internal;
