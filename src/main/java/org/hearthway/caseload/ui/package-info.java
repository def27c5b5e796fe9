/** The screens of the caseload: Needs a look, Children, the frame of a child's folder. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload.ui;
