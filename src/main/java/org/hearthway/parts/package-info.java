/** Shared screen components; they know no feature. */
@org.jspecify.annotations.NullMarked
package org.hearthway.parts;
