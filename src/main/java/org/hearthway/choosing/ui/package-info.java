/** Choosing together, in the folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.choosing.ui;
