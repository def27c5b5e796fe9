/** The talk that chooses a path: facts about a child, what speaks for and against each path, and what was decided. */
@org.jspecify.annotations.NullMarked
package org.hearthway.choosing;
