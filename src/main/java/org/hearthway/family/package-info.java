/** The family's five places, composed of the features. */
@org.jspecify.annotations.NullMarked
package org.hearthway.family;
