/** What tests share. */
@org.jspecify.annotations.NullMarked
package org.hearthway.testing;
