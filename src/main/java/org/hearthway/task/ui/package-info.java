/** The tasks in a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.task.ui;
