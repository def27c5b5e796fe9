/** Puts sheets together, keeps signed plans, opens short-lived links, writes PDF. */
@org.jspecify.annotations.NullMarked
package org.hearthway.paper.internal;
