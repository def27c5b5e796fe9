package org.hearthway.family;

import org.hearthway.program.engine.ProgramLine;

/** Which side a picture shows: it is drawn with the right; for the left it is seen in a mirror. */
final class Side {

    private Side() {}

    static boolean isLeft(ProgramLine line) {
        return line.side() == ProgramLine.Side.LEFT;
    }
}
