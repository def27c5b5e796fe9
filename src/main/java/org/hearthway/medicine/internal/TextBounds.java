package org.hearthway.medicine.internal;

import java.util.List;
import org.hearthway.base.Problem;

/** Bounds of what people type, said in one way. */
record TextBounds(List<Problem> problems) {

    /** A text that must be there. */
    void needed(String field, String key, String text, int most) {
        if (text.isBlank() || text.strip().length() > most) {
            problems.add(Problem.at(field, key, most));
        }
    }

    /** A text that may be empty. */
    void atMost(String field, String key, String text, int most) {
        if (text.strip().length() > most) {
            problems.add(Problem.at(field, key, most));
        }
    }
}
