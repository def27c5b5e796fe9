package org.hearthway.family;

import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;

/** One exercise on one day for a helper, who sees nothing of the path: what is not allowed is not planned. */
@Route("help/:child/exercise/:exercise")
@RolesAllowed("HELPER")
class HelpExerciseView extends ExercisePage {

    HelpExerciseView(Readers readers, HomeWeek week, ExerciseLibrary library) {
        super(readers, week, library);
    }

    @Override
    Reader read(Readers from, String child) {
        return from.helping(child);
    }

    @Override
    List<Plan.Care> cautions(Reader reader, LocalDate date) {
        return List.of();
    }

    @Override
    boolean mayLog(Reader reader) {
        return true;
    }
}
