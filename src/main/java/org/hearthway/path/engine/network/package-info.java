/**
 * A simple temporal network over dates: points, rules between them, the days each may lie on, and the search for a day
 * for every point. Knows nothing of stages or visits.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.path.engine.network;
