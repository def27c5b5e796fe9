/** Lays a program out over a family's week: what is done when, what does not fit, and what a missed session becomes. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.program.engine.week;
