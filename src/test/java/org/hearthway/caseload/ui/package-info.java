/** Tests of the screens of the list of what needs a look. */
@org.jspecify.annotations.NullMarked
package org.hearthway.caseload.ui;
