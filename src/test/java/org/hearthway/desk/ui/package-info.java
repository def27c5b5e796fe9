/** Tests of the desk's screen. */
@org.jspecify.annotations.NullMarked
package org.hearthway.desk.ui;
