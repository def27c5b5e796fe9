package org.hearthway.content;

import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Viewer;

/** What could go wrong with the program in hand, what stands against it, and which tests prove that. */
public interface Hazards {

    /**
     * Hazards of one field, in the order in which they were written.
     *
     * @param name the field
     * @param hazards at least one
     */
    record Field(Bilingual name, List<Hazard> hazards) {
        public Field {
            hazards = List.copyOf(hazards);
        }
    }

    /**
     * One thing that could go wrong.
     *
     * @param id identifier, unique among all
     * @param says what could happen
     * @param cause what would lead to it
     * @param control what the program does against it
     * @param proofs the tests that fail when the control is taken away, at least one
     */
    record Hazard(String id, Bilingual says, Bilingual cause, Bilingual control, List<Proof> proofs) {
        public Hazard {
            proofs = List.copyOf(proofs);
        }
    }

    /**
     * A test of the program.
     *
     * @param type simple name of its class, such as {@code SignsTests}
     * @param method name of its method
     */
    record Proof(String type, String method) {}

    /**
     * All hazards, field by field; for administrators.
     *
     * @throws org.hearthway.base.NotAvailable unless the viewer runs the clinic
     */
    List<Field> all(Viewer viewer);
}
