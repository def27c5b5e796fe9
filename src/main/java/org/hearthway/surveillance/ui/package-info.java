/** A child's hip and spine checks in the folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.surveillance.ui;
