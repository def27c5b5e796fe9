package org.hearthway.surveillance.engine;

import java.time.LocalDate;

/**
 * A check that took place, as far as dates depend on it.
 *
 * @param day when
 * @param stable whether the team called it stable then; the last word counts
 */
public record Done(LocalDate day, boolean stable) {}
