/** Values and pure functions of {@code equipment}: nothing from outside but the language and {@code base}. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.equipment.engine;
