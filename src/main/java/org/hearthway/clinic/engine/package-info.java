/** Holidays by rule: pure functions of the year. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.clinic.engine;
