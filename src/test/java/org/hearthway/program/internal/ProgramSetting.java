package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentReading;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
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
    RulesOfCare plans() {
        return new RulesOfCare();
    }

    @Bean
    Accepted signOff() {
        return new Accepted();
    }

    @Bean
    SmartInitializingSingleton content(PrecautionTags tags, PaceSetting pace, ExerciseKind exercises) {
        return () -> {
            assertThat(ContentReading.shipped(tags)).isEmpty();
            assertThat(ContentReading.shipped(pace)).isEmpty();
            assertThat(ContentReading.shipped(exercises)).isEmpty();
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
    static class Accepted implements SignOff {
        final Set<String> hidden = new java.util.HashSet<>();

        @Override
        public boolean isShown(Item item) {
            return !hidden.contains(item.id());
        }

        @Override
        public Set<Item> shownAmong(List<Item> items) {
            return items.stream().filter(this::isShown).collect(Collectors.toSet());
        }

        @Override
        public void accept(Viewer viewer, List<Item> items) {
            items.forEach(item -> hidden.remove(item.id()));
        }
    }

    /** A plan of one stage with the rules of care that a test gives. */
    static class RulesOfCare implements Plans {
        private List<Plan.Care> care = List.of();

        void none() {
            care = List.of();
        }

        void rule(String tag, boolean forbids, LocalDate from, LocalDate until) {
            care = List.of(new Plan.Care(
                    new Template.Precaution(
                            tag,
                            forbids,
                            Period.ZERO,
                            Period.ZERO,
                            new Bilingual("Take care.", "Con cuidado."),
                            "test"),
                    from,
                    until));
        }

        @Override
        public Optional<ChildPlan> plan(Viewer viewer, ChildId child) {
            var name = Bilingual.same("Stage");
            var after =
                    new Template.After(Optional.empty(), Template.Edge.START, Period.ZERO, Period.ZERO, Period.ZERO);
            var stage = new Template.Stage(
                    "stage",
                    name,
                    name,
                    after,
                    Period.ofWeeks(6),
                    false,
                    false,
                    List.of(),
                    List.of(),
                    List.of(),
                    name,
                    "test");
            var day = LocalDate.of(2026, 3, 1);
            var planned = new Plan.Planned(
                    stage,
                    Plan.State.NOW,
                    day,
                    day,
                    day,
                    day.plusWeeks(6),
                    new Plan.Why(Plan.Origin.RULE, Optional.empty(), Optional.empty(), day, Optional.empty(), false),
                    List.of(),
                    care);
            var template = new Template("path", 1, name, List.of(stage));
            return Optional.of(new ChildPlan(new Plan(template, day, List.of(planned)), 1));
        }

        @Override
        public List<Template> pathways() {
            throw new UnsupportedOperationException();
        }

        @Override
        public void begin(Viewer viewer, ChildId child, String pathway, LocalDate day, String reason) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Preview preview(Viewer viewer, ChildId child, Change change) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void apply(Viewer viewer, ChildId child, Change change, String reason, long seen) {
            throw new UnsupportedOperationException();
        }

        @Override
        public List<Plan.Care> precautions(Viewer viewer, ChildId child, LocalDate day) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Bilingual why(Plan.Planned stage) {
            throw new UnsupportedOperationException();
        }
    }
}
