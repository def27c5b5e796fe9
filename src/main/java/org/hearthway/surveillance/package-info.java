/** Hips and spine watched over the years: which check is due when by a published rhythm, and what each one showed. */
@org.jspecify.annotations.NullMarked
package org.hearthway.surveillance;
