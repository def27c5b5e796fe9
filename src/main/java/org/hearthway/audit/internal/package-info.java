/** Writes the trail and what is told to families. */
@org.jspecify.annotations.NullMarked
package org.hearthway.audit.internal;
