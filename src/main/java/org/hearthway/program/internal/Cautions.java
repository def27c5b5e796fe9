package org.hearthway.program.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.Programs.Caution;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.ProgramLine;
import org.springframework.stereotype.Component;

/** Where exercises of a program meet rules of care of the child's path. */
@Component
class Cautions {

    private final Plans plans;
    private final ExerciseLibrary library;

    Cautions(Plans plans, ExerciseLibrary library) {
        this.plans = plans;
        this.library = library;
    }

    /** Every rule of care of the child's plan, whenever it holds. */
    List<Plan.Care> rules(Viewer viewer, ChildId child) {
        return plans.plans(viewer, child).stream()
                .flatMap(p -> p.plan().stages().stream())
                .flatMap(stage -> stage.precautions().stream())
                .toList();
    }

    /** Where lines meet rules, rules that leave was given from included. */
    List<Caution> of(Draft draft, List<Plan.Care> rules) {
        var found = new ArrayList<Caution>();
        for (int i = 0; i < draft.lines().size(); i++) {
            var line = draft.lines().get(i);
            var first = draft.effective();
            for (var care : rules) {
                var from = care.from().isBefore(first) ? first : care.from();
                if (carries(line.exercise(), care)
                        && line.firstDayWithin(from, care.until()).isPresent()) {
                    found.add(new Caution(i, care, leave(line, care, from)));
                }
            }
        }
        return List.copyOf(found);
    }

    /** The leave after which no day of the line is left that the rule forbids. */
    private static Optional<Excepted> leave(ProgramLine line, Plan.Care care, LocalDate from) {
        return line.exceptions().stream()
                .filter(leave -> leave.covers(care.rule().tag(), care.from(), from)
                        && line.firstDayWithin(leave.until(), care.until()).isEmpty())
                .findFirst();
    }

    /** The rule that locks a line on a day, if one does and no leave from it was given. */
    Optional<Plan.Care> lock(ProgramLine line, LocalDate day, List<Plan.Care> rules) {
        return lock(line.exercise(), line.exceptions(), day, rules);
    }

    /** The rule that locks an exercise on a day, if one does and no leave from it was given. */
    Optional<Plan.Care> lock(String exercise, List<Excepted> leave, LocalDate day, List<Plan.Care> rules) {
        return rules.stream()
                .filter(care -> care.rule().forbids() && care.holdsOn(day) && carries(exercise, care))
                .filter(care -> leave.stream()
                        .noneMatch(given -> given.covers(care.rule().tag(), care.from(), day)))
                .findFirst();
    }

    private boolean carries(String exercise, Plan.Care care) {
        return library.find(exercise)
                .filter(e -> e.tags().contains(care.rule().tag()))
                .isPresent();
    }
}
