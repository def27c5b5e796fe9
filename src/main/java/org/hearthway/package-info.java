/** Hearthway: a child's care pathway, home program, dates and signs to call about. */
@org.jspecify.annotations.NullMarked
package org.hearthway;
