package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.content.ContentReading;
import org.hearthway.content.SignOff;
import org.hearthway.figure.Figures;
import org.hearthway.figure.internal.ShippedFigures;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.program.ProgramWords;
import org.hearthway.testing.LeanClinic;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.EventListener;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Programs with the shipped exercises, on a path whose rules of care a test sets by hand. */
@Import({LeanClinic.class, ProgramWords.class})
@ComponentScan("org.hearthway.program.internal")
class ProgramSetting {

    @Bean
    TransactionTemplate transaction(PlatformTransactionManager manager) {
        return new TransactionTemplate(manager);
    }

    @Bean
    Heard heard() {
        return new Heard();
    }

    @Bean
    RulesOfCare care() {
        return new RulesOfCare();
    }

    @Bean
    Plans plans(RulesOfCare care) {
        return care.plans;
    }

    /** Whoever it is, the child is eight years old. */
    @Bean
    ChildRegister children() {
        var register = mock(ChildRegister.class);
        var eight = mock(Child.class);
        when(eight.ageOn(any())).thenReturn(8);
        when(register.get(any(), any())).thenReturn(eight);
        return register;
    }

    @Bean
    Accepted accepted() {
        return new Accepted();
    }

    @Bean
    SignOff signOff(Accepted accepted) {
        return accepted.signOff;
    }

    @Bean
    Figures figures() {
        return ShippedFigures.all();
    }

    @Bean
    SmartInitializingSingleton content(
            PrecautionTags tags,
            MuscleGroups groups,
            HomeThings things,
            PaceSetting pace,
            ExerciseKind exercises,
            StarterKind starters) {
        return () -> {
            assertThat(ContentReading.shipped(tags)).isEmpty();
            assertThat(ContentReading.shipped(groups)).isEmpty();
            assertThat(ContentReading.shipped(things)).isEmpty();
            assertThat(ContentReading.shipped(pace)).isEmpty();
            assertThat(ContentReading.shipped(exercises)).isEmpty();
            assertThat(ContentReading.shipped(starters)).isEmpty();
        };
    }

    /** Hears what programs tell. */
    static class Heard {
        final List<Change> changes = new ArrayList<>();
        boolean failing;

        @EventListener
        synchronized void on(Change change) {
            if (failing) {
                throw new IllegalStateException("cannot keep it");
            }
            changes.add(change);
        }
    }

    /** Content that families may see: all, unless a test hides some. */
    static class Accepted {
        final Set<String> hidden = new HashSet<>();
        final SignOff signOff = mock(SignOff.class);

        Accepted() {
            when(signOff.shownAmong(any()))
                    .thenAnswer(asked -> asked.<List<SignOff.Item>>getArgument(0).stream()
                            .filter(item -> !hidden.contains(item.id()))
                            .collect(Collectors.toSet()));
        }
    }

    /** A plan of one stage with the rules of care that a test gives. */
    static class RulesOfCare {
        final Plans plans = mock(Plans.class);

        void none() {
            care(List.of());
        }

        void rule(String tag, boolean forbids, LocalDate from, LocalDate until) {
            var says = new Bilingual("Take care.", "Con cuidado.");
            var rule = new Template.Precaution(tag, forbids, Period.ZERO, Optional.empty(), says, "test");
            care(List.of(new Plan.Care(rule, from, until)));
        }

        private void care(List<Plan.Care> care) {
            var stage = mock(Plan.Planned.class);
            when(stage.precautions()).thenReturn(care);
            var plan = mock(Plan.class);
            when(plan.stages()).thenReturn(List.of(stage));
            var course = Course.begun(LocalDate.EPOCH);
            when(plans.plans(any(), any())).thenReturn(List.of(new Plans.ChildPlan(plan, course, Map.of(), 1)));
        }
    }
}
