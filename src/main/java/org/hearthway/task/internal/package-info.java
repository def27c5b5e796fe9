/** How tasks are kept, given and ended, and the ready texts. */
@org.jspecify.annotations.NullMarked
package org.hearthway.task.internal;
