/** Reminders: rules as data, an outbox of our own, mail, quiet hours, and tasks to call. */
@org.jspecify.annotations.NullMarked
package org.hearthway.reminder;
