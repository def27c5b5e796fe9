/** Reads the files of {@code content/figures} and serves the pictures. */
@org.jspecify.annotations.NullMarked
package org.hearthway.figure.internal;
