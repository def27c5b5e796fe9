/** Keeps recorded checks and reads the rhythms. */
@org.jspecify.annotations.NullMarked
package org.hearthway.surveillance.internal;
