/** The folder's Path page: the way drawn on a time line, its dates and rules, and what a change would move. */
@org.jspecify.annotations.NullMarked
package org.hearthway.path.ui;
