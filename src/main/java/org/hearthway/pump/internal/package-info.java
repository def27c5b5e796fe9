/** Keeps recorded fills and answers for them. */
@org.jspecify.annotations.NullMarked
package org.hearthway.pump.internal;
