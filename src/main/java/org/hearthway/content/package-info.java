/** The clinic's knowledge as data: a strict reader with line marks, one start check over all kinds, and sign-off. */
@org.jspecify.annotations.NullMarked
package org.hearthway.content;
