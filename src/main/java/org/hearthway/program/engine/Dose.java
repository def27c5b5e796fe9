package org.hearthway.program.engine;

/**
 * How much of an exercise: either repetitions or minutes, with holds where it says so.
 *
 * @param sets rounds, 1 to 10
 * @param repetitions times in a round, 1 to 100; 0 when the dose is in minutes
 * @param holdSeconds seconds of each hold, 0 to 600; 0 for none
 * @param minutes minutes at a time, 1 to 240; 0 when the dose is in repetitions
 * @param timesADay 1 to 6
 */
public record Dose(int sets, int repetitions, int holdSeconds, int minutes, int timesADay) {}
