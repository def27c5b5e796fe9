/** Values and pure functions of {@code medicine}: nothing from outside but the language and {@code base}. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.medicine.engine;
