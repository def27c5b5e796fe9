package org.hearthway.surveillance.engine;

import java.time.LocalDate;

/**
 * A check to come, with the rule that asks for it.
 *
 * @param from first day on which it answers
 * @param by the day by which it should be done
 * @param rule which part of the rhythm asks for it
 * @param counted the day that it is counted from: of birth, of the first or of the last check
 */
public record Due(LocalDate from, LocalDate by, Step rule, LocalDate counted) {}
