/** Tests of the stored list. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload.internal;
