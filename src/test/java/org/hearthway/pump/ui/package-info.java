/** Walks through the pump of a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.pump.ui;
