/** Walks through the running program in a real browser, at the size of a phone and of a desk. */
@org.jspecify.annotations.NullMarked
package org.hearthway.browser;
