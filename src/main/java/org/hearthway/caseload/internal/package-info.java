/** Keeps what needs a look, and finds it from what the other features know. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload.internal;
