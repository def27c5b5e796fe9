/** Tasks about a child, for the team or for the family, each with a day and an outcome. */
@org.jspecify.annotations.NullMarked
package org.hearthway.task;
