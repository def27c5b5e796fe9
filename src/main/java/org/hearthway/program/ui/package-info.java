/** The program's place in a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.program.ui;
