/** Accounts, sign-in, links and the access decision at work. */
@org.jspecify.annotations.NullMarked
package org.hearthway.access.internal;
