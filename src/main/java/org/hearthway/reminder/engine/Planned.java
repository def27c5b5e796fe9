package org.hearthway.reminder.engine;

import java.time.Instant;

/**
 * A reminder with its instant.
 *
 * @param step name of the step
 * @param way by mail or by a call
 * @param text identifier of the text
 * @param urgent whether it comes before everything else
 * @param meant the instant that the rule names; with the step it identifies the reminder
 * @param due when it goes: {@code meant}, or later because the hour was quiet or had passed
 * @param usefulUntil the last instant at which sending still helps; never before {@code due}
 */
public record Planned(
        String step, Way way, String text, boolean urgent, Instant meant, Instant due, Instant usefulUntil) {}
