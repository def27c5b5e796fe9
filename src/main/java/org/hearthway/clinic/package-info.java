/** The clinic itself: its settings, its opening days and holidays. */
@org.jspecify.annotations.NullMarked
package org.hearthway.clinic;
