/** What is printed or handed to a stranger: the emergency sheet of a child with a device. */
@org.jspecify.annotations.NullMarked
package org.hearthway.paper;
