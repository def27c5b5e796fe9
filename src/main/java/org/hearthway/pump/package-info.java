/** Pump refills in their simplest form: the alarm date from the device print-out gives the refill-by date. */
@org.jspecify.annotations.NullMarked
package org.hearthway.pump;
