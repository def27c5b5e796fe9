package org.hearthway.testing;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.network.Span;

/** Plans of one stage, for tests of what reads a plan. */
public final class PlanSamples {

    private static final Template.After AT_ONCE = new Template.After(
            Optional.empty(), Template.Edge.START, Period.ZERO, Optional.of(Period.ZERO), Optional.of(Period.ZERO));

    private PlanSamples() {}

    /** A stage with these tasks of the family. */
    public static Template.Stage stage(String id, Bilingual name, String... tasks) {
        var family = List.of(tasks).stream()
                .map(task -> new Template.FamilyTask(Bilingual.same(task), Optional.empty()))
                .toList();
        return new Template.Stage(
                id,
                name,
                name,
                name,
                "common practice, no source",
                Template.Responsible.NURSE,
                new Template.Timing(
                        List.of(AT_ONCE),
                        Template.Length.about(Period.ofDays(20)),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        false,
                        false,
                        Optional.empty(),
                        List.of()),
                new Template.Duties(family, List.of(), List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** A plan with this stage alone, made on a day. */
    public static Plan plan(
            String path,
            Template.Stage stage,
            Plan.State state,
            LocalDate today,
            LocalDate start,
            LocalDate end,
            Plan.VisitWindow... windows) {
        var why = new Plan.Why(
                Plan.Origin.RULE,
                Optional.empty(),
                Optional.empty(),
                start,
                Optional.empty(),
                false,
                false,
                AT_ONCE,
                false,
                Optional.empty());
        var planned = new Plan.Planned(
                stage,
                1,
                state,
                Plan.Said.NOTHING,
                start,
                start,
                Optional.of(start),
                end,
                new Span(start, start),
                why,
                List.of(windows),
                List.of(),
                Optional.empty());
        var template = new Template(path, 1, stage.name(), Optional.empty(), List.of(stage), List.of());
        return new Plan(template, today, List.of(planned), Optional.empty());
    }
}
