/** The drawn body: pictures of exercises, solved and drawn from the angles that their authors wrote. */
@org.jspecify.annotations.NullMarked
package org.hearthway.figure;
