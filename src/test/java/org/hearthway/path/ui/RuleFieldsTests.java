package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.AbstractField.ComponentValueChangeEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.textfield.IntegerField;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Course.RuleAt;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.internal.GapWords;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The fields of a child's own gap, without a browser: what nobody typed into is saved as it was. */
@HearthwayTest
class RuleFieldsTests {

    private static final String STAGE = "six-week-check";
    private static final Period ODD = Period.of(0, 1, 10);

    @Autowired
    private Plans plans;

    @Autowired
    private Words words;

    @Autowired
    private GapWords gaps;

    private StageWords say() {
        return new StageWords(words, gaps, Language.EN);
    }

    private Template path() {
        return plans.pathways().stream()
                .filter(path -> path.id().equals("sdr"))
                .findFirst()
                .orElseThrow();
    }

    private RuleFields fields(After own, Runnable changed) {
        var course = Course.begun(LocalDate.of(2026, 3, 12)).withGaps(Map.of(new RuleAt(STAGE, 0), own));
        return new RuleFields(say(), path(), path().stage(STAGE).orElseThrow(), course, changed);
    }

    private static After own(Period earliest, Optional<Period> usual, Optional<Period> latest) {
        return new After(Optional.empty(), Template.Edge.START, earliest, usual, latest);
    }

    private static After saved(RuleFields fields) {
        return ((Change.OwnRule) fields.change().orElseThrow()).rule();
    }

    private static Stream<Component> all(Component component) {
        return Stream.concat(Stream.of(component), component.getChildren().flatMap(RuleFieldsTests::all));
    }

    /** As a browser tells it: first the number, then that the whole field changed. */
    private static Period typed(GapField field, Integer number) {
        var inner = all(field)
                .filter(IntegerField.class::isInstance)
                .map(IntegerField.class::cast)
                .findFirst()
                .orElseThrow();
        var before = inner.getValue();
        inner.setValue(number);
        ComponentUtil.fireEvent(inner, new ComponentValueChangeEvent<>(inner, inner, before, true));
        return field.generateModelValue();
    }

    private static GapField field(RuleFields fields, int at) {
        return all(fields)
                .filter(GapField.class::isInstance)
                .map(GapField.class::cast)
                .toList()
                .get(at);
    }

    @Test
    void gapsOfMonthsAndDaysAreSavedAsTheyWereWhenAnotherIsTyped() {
        var fields = fields(own(ODD, Optional.of(Period.ofMonths(2)), Optional.of(Period.of(0, 3, 5))), () -> {});
        fields.usual().setValue(Period.ofWeeks(9));
        assertThat(saved(fields).earliest()).isEqualTo(ODD);
        assertThat(saved(fields).usual()).contains(Period.ofWeeks(9));
        assertThat(saved(fields).latest()).contains(Period.of(0, 3, 5));
    }

    static Stream<Period> gaps() {
        return Stream.of(
                ODD,
                Period.of(1, 2, 3),
                Period.of(2, 0, 1),
                Period.of(0, 0, 10),
                Period.ofWeeks(6),
                Period.ofMonths(18),
                Period.ofYears(2),
                Period.ZERO);
    }

    /** Whatever it is made of: as long as the same days are counted, in the same unit where a unit tells it. */
    @ParameterizedTest
    @MethodSource("gaps")
    void eachOfTheThreeStaysWhileTheTwoOthersAreTyped(Period gap) {
        for (int kept = 0; kept < 3; kept++) {
            var fields = fields(own(gap, Optional.of(gap), Optional.of(gap)), () -> {});
            for (int other : List.of(0, 1, 2)) {
                if (other != kept) {
                    field(fields, other).setValue(Period.ofDays(3));
                }
            }
            var saved = saved(fields);
            var all = List.of(
                    saved.earliest(),
                    saved.usual().orElseThrow(),
                    saved.latest().orElseThrow());
            assertThat(all.get(kept).normalized()).isEqualTo(gap.normalized());
            // and a field that is left again without a number typed says the same
            assertThat(field(fields, kept).generateModelValue())
                    .isNotNull()
                    .satisfies(same -> assertThat(same.normalized()).isEqualTo(gap.normalized()));
        }
    }

    @Test
    void whatCannotBeToldInOneUnitStandsBesideTheFieldUntilSomebodyTypes() {
        var field = new GapField(say(), "Usually after");
        field.setValue(ODD);
        assertThat(field.getHelperText()).contains("month").contains("10 days");
        assertThat(typed(field, 5)).isEqualTo(Period.ofWeeks(5));
        assertThat(field.getHelperText()).isEmpty();
        // and does not come back when the number is taken out again
        assertThat(typed(field, null)).isNull();
    }

    @Test
    void aGapThatIsTakenOutIsSavedAsNone() {
        var fields = fields(own(ODD, Optional.of(ODD), Optional.of(ODD)), () -> {});
        fields.usual().clear();
        assertThat(saved(fields).usual()).isEmpty();
        assertThat(saved(fields).earliest()).isEqualTo(ODD);
        field(fields, 0).clear();
        assertThat(fields.change()).isEmpty();
    }

    @Test
    void showingTheGapsChangesNothing() {
        var changes = new AtomicInteger();
        fields(own(ODD, Optional.of(ODD), Optional.empty()), changes::incrementAndGet);
        assertThat(changes).hasValue(0);
    }

    @ParameterizedTest
    @EnumSource(GapUnit.class)
    void everyUnitReadsBackWhatItMade(GapUnit unit) {
        for (int many : List.of(1, 2, 5, 11, 13, 100)) {
            assertThat(unit.of(unit.gap(many))).contains(many);
        }
    }

    @Test
    void noUnitTellsAGapOfMonthsAndDays() {
        for (var unit : GapUnit.values()) {
            assertThat(unit.of(ODD)).as(unit.name()).isEmpty();
        }
    }
}
