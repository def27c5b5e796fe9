/** What is printed: the emergency sheet of a child with a device, and the pages for choosing a path. */
@org.jspecify.annotations.NullMarked
package org.hearthway.paper;
