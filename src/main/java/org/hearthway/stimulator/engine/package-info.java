/** The arithmetic of a generator: a robust line through its readings, the window for a new one, sudden falls, charging. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.stimulator.engine;
