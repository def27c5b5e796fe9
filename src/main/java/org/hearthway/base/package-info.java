/** Values, identifiers and the words of access that every module shares; plain Java only. */
@org.jspecify.annotations.NullMarked
package org.hearthway.base;
