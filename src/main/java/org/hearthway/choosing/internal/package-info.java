/** Keeps facts and decisions, and reads what the clinic knows of each path. */
@org.jspecify.annotations.NullMarked
package org.hearthway.choosing.internal;
