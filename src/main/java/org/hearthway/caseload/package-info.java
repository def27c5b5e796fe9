/** Needs a look, Children, and a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload;
