/** The laws of the code: which module may use which, where time and screens may be touched, and that words are kept. */
@org.jspecify.annotations.NullMarked
package org.hearthway.laws;
