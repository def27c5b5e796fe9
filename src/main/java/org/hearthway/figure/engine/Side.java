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

    /** Where it stands among all of its kind, from 0. */
    int place() {
        return this == RIGHT ? 0 : 1;
    }

    Side other() {
        return this == RIGHT ? LEFT : RIGHT;
    }
}
