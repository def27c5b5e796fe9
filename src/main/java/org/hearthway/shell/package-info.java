/** The frame around staff pages, sign-in, the way home, errors and languages. */
@org.jspecify.annotations.NullMarked
package org.hearthway.shell;
