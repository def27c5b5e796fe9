package org.hearthway.family;

import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;

/** One exercise on one day for the family, with the rules of care that hold then. */
@Route("my/:child/exercise/:exercise")
@PermitAll
class ExerciseView extends ExercisePage {

    private final transient FamilyPlans plans;
    private final transient Gate gate;

    ExerciseView(Readers readers, HomeWeek week, ExerciseLibrary library, FamilyPlans plans, Gate gate) {
        super(readers, week, library);
        this.plans = plans;
        this.gate = gate;
    }

    @Override
    List<Plan.Care> cautions(Reader reader, LocalDate date) {
        return plans.precautions(reader, date);
    }

    @Override
    boolean mayLog(Reader reader) {
        return gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id());
    }
}
