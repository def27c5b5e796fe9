/** Keeps casts, splints and equipment and answers for them. */
@org.jspecify.annotations.NullMarked
package org.hearthway.equipment.internal;
