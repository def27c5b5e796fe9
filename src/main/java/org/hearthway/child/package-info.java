/** A child: names, birth date, level, and who cares for the child. */
@org.jspecify.annotations.NullMarked
package org.hearthway.child;
