/** Accounts, roles, sign-in, invitations, links, and the one access decision. */
@org.jspecify.annotations.NullMarked
package org.hearthway.access;
