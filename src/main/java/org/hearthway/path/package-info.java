/** Care pathways: stage templates as data, a child's plan, why each date, and what a change would move. */
@org.jspecify.annotations.NullMarked
package org.hearthway.path;
