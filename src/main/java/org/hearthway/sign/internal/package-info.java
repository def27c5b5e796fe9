/** How signs are read, reports are kept and the office hours are told. */
@org.jspecify.annotations.NullMarked
package org.hearthway.sign.internal;
