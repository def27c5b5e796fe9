package org.hearthway.figure.engine;

/**
 * How a picture is to be shown to one reader.
 *
 * @param mirrored for the left side
 * @param tone of the skin, 1 light to 4 dark; 0 as its author chose
 */
public record Dress(boolean mirrored, int tone) {}
