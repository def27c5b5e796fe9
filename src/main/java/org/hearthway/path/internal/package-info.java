/** Reads path content, keeps what was decided for each child, and answers for it. */
@org.jspecify.annotations.NullMarked
package org.hearthway.path.internal;
