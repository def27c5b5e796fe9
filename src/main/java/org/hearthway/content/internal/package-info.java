/** Keeps which family content was accepted by whom. */
@org.jspecify.annotations.NullMarked
package org.hearthway.content.internal;
