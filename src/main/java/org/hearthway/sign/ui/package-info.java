/** The page that says when to call, and the reports in a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.sign.ui;
