/** How visits are kept, booked and answered. */
@org.jspecify.annotations.NullMarked
package org.hearthway.visit.internal;
