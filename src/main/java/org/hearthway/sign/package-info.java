/** Signs that need a call, reports of them, and notes to the team. */
@org.jspecify.annotations.NullMarked
package org.hearthway.sign;
