/** Reading the rules and texts, planning, keeping and delivering messages, and the page that a message's link opens. */
@org.jspecify.annotations.NullMarked
package org.hearthway.reminder.internal;
