/** Values and pure functions of {@code choosing}: nothing from outside but the language and {@code base}. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.choosing.engine;
