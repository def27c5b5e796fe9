package org.hearthway.figure.engine;

/** A side of the body, as its owner says it. */
public enum Side {
    RIGHT(1, "R"),
    LEFT(-1, "L");

    final int sign;
    final String letter;

    Side(int sign, String letter) {
        this.sign = sign;
        this.letter = letter;
    }

    Side other() {
        return this == RIGHT ? LEFT : RIGHT;
    }
}
