/** The folder's Pump page: the refill-by date with its arithmetic, and the form that records a fill. */
@org.jspecify.annotations.NullMarked
package org.hearthway.pump.ui;
