/** A child's casts, splints and equipment in the folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.equipment.ui;
