package org.hearthway.program;

import java.util.List;
import java.util.Optional;

/** The exercises that the clinic's content holds. */
public interface ExerciseLibrary {

    /** All exercises, by English name. */
    List<Exercise> all();

    /** The exercise with this identifier. */
    Optional<Exercise> find(String id);
}
