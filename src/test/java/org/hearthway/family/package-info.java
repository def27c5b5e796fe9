/** Checks of the family's pages: what they say, and that what people typed stays text. */
@org.jspecify.annotations.NullMarked
package org.hearthway.family;
