/** Reads exercises and keeps programs, drafts and what was done. */
@org.jspecify.annotations.NullMarked
package org.hearthway.program.internal;
