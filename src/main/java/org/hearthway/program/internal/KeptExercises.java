package org.hearthway.program.internal;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * What prescribed exercises said. A child's program goes on with the last text of an exercise whose file is gone, as long
 * as its picture is there.
 */
@Component
class KeptExercises {

    private final JdbcClient jdbc;
    private final Figures figures;
    private final Clock clock;
    private final Map<String, Exercise> gone = new ConcurrentHashMap<>();

    KeptExercises(JdbcClient jdbc, Figures figures, Clock clock) {
        this.jdbc = jdbc;
        this.figures = figures;
        this.clock = clock;
    }

    /** Keeps what it says now, in the caller's transaction. */
    void keep(Exercise exercise) {
        var version = exercise.provenance().version();
        var known = jdbc.sql(
                        "select count(*) from kept_exercise where exercise = :exercise and text_version = :version")
                .param("exercise", exercise.id())
                .param("version", version)
                .query(Integer.class)
                .single();
        if (known == 0) {
            insert(exercise, version);
        }
    }

    private void insert(Exercise exercise, int version) {
        try {
            jdbc.sql("insert into kept_exercise (exercise, text_version, body, kept_at)"
                            + " select :exercise, :version, :body, :at where not exists (select 1 from kept_exercise"
                            + " where exercise = :exercise and text_version = :version)")
                    .param("exercise", exercise.id())
                    .param("version", version)
                    .param("body", ExerciseJson.write(exercise))
                    .param("at", ProgramStore.utc(clock.instant()))
                    .update();
        } catch (DuplicateKeyException atOnce) {
            // two programs with it were saved at once, and the other one kept it
        }
    }

    /** The last text of an exercise that the library no longer holds; nothing of it changes while the program runs. */
    Optional<Exercise> last(String id) {
        var known = Optional.ofNullable(gone.get(id));
        if (known.isPresent()) {
            return known;
        }
        var read = read(id);
        read.ifPresent(exercise -> gone.put(id, exercise));
        return read;
    }

    private Optional<Exercise> read(String id) {
        return jdbc
                .sql("select body from kept_exercise where exercise = :exercise order by text_version desc")
                .param("exercise", id)
                .query(String.class)
                .list()
                .stream()
                .findFirst()
                .map(body -> ExerciseJson.read(body, figures))
                .filter(exercise -> figures.has(exercise.figure().id()));
    }
}
