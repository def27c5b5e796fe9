/** Values and pure functions of {@code figure}: a jointed body, what it touches, and its drawing. */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.NamedInterface("engine")
package org.hearthway.figure.engine;
