package org.hearthway.program;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.program.engine.Pace;

/** The exercises that the clinic's content holds. */
public interface ExerciseLibrary {

    /** All exercises, by English name. */
    List<Exercise> all();

    /** The exercise with this identifier; one that is {@linkplain #isGone gone} with the last text that a program kept. */
    Optional<Exercise> find(String id);

    /** Whether the content no longer holds it: a program that has it goes on with its last text, and none gets it anew. */
    boolean isGone(String id);

    /** Short name of a movement that a rule of care can forbid, such as "passive twist of the back". */
    Optional<Bilingual> precaution(String tag);

    /** How long the clinic reckons exercises take. */
    Pace pace();
}
