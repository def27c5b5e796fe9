/** The home program: exercises as data, versions of a prescription, the week, and what was done. */
@org.jspecify.annotations.NullMarked
package org.hearthway.program;
