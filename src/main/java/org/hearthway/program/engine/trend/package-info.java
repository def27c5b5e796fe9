/** What a record teaches: how much was done, how hard it was and how sore, and whether that changed. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.program.engine.trend;
