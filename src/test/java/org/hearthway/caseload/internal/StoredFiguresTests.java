package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.NeedFigures;
import org.hearthway.caseload.NeedFigures.Said;
import org.hearthway.caseload.NeedFigures.Value;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class StoredFiguresTests {

    @Autowired
    NeedFigures figures;

    @Autowired
    ClinicBook book;

    private final Viewer.Person administrator = People.with(Role.ADMINISTRATOR);

    private Value value(Figure figure) {
        return figures.all(administrator).stream()
                .filter(value -> value.figure() == figure)
                .findFirst()
                .orElseThrow();
    }

    private void say(Figure figure, int number) {
        figures.say(
                administrator, figure, number, "Because of us", value(figure).version());
    }

    /** The tests share one clinic: what one has said, it takes back. */
    @AfterEach
    void takeBack() {
        figures.all(administrator).stream()
                .filter(value -> value.own().isPresent())
                .sorted(Comparator.comparing(Value::figure).reversed())
                .forEach(value -> figures.takeBack(administrator, value.figure(), "As it was", value.version()));
    }

    private List<Problem> refused(Figure figure, int number, String reason) {
        return catchThrowableOfType(
                        Invalid.class,
                        () -> figures.say(
                                administrator,
                                figure,
                                number,
                                reason,
                                value(figure).version()))
                .problems();
    }

    @Test
    void whatShipsCountsUntilTheClinicSaysAnotherNumber() {
        assertThat(value(Figure.SORE_DAYS).counts()).isEqualTo(5);
        assertThat(book.now().figure(Figure.SORE_DAYS)).isEqualTo(5);
        say(Figure.SORE_DAYS, 6);
        assertThat(value(Figure.SORE_DAYS).counts()).isEqualTo(6);
        assertThat(value(Figure.SORE_DAYS).shipped()).isEqualTo(5);
        assertThat(book.now().figure(Figure.SORE_DAYS)).isEqualTo(6);
        assertThat(book.now().figure(Figure.HARD_DAYS)).as("the others stay").isEqualTo(4);
    }

    @Test
    void whatIsTakenBackStaysWrittenDown() {
        say(Figure.RISING_BY, 2);
        figures.takeBack(
                administrator,
                Figure.RISING_BY,
                "Too few were found",
                value(Figure.RISING_BY).version());
        assertThat(book.now().figure(Figure.RISING_BY)).isEqualTo(1);
        assertThat(figures.history(administrator).stream()
                        .filter(said -> said.figure() == Figure.RISING_BY)
                        .limit(2))
                .extracting(Said::number, Said::before, Said::reason, Said::by)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(
                                Optional.empty(), 2, "Too few were found", administrator.account()),
                        org.assertj.core.groups.Tuple.tuple(
                                Optional.of(2), 1, "Because of us", administrator.account()));
    }

    @Test
    void everyNumberHasItsBounds() {
        for (var figure : Figure.values()) {
            assertThat(refused(figure, figure.most() + 1, "because"))
                    .as(figure.name())
                    .extracting(Problem::field)
                    .containsExactly("number");
            assertThat(refused(figure, figure.least() - 1, "because"))
                    .as(figure.name())
                    .extracting(Problem::key)
                    .containsExactly("caseload.figure.bounds");
        }
        assertThat(Figure.PAIN_FROM.most())
                .as("where the family is told to call")
                .isEqualTo(7);
    }

    @Test
    void daysAreNeverMoreThanTheDaysTheyAreCountedIn() {
        assertThat(refused(Figure.SORE_DAYS, 15, "because"))
                .extracting(Problem::key)
                .containsExactly("caseload.figure.within");
        say(Figure.SORE_DAYS, 9);
        assertThat(refused(Figure.SORE_WITHIN, 8, "because"))
                .extracting(Problem::key)
                .containsExactly("caseload.figure.within");
        say(Figure.SORE_WITHIN, 9);
    }

    @Test
    void aNumberAsksForAReasonAndAChange() {
        assertThat(refused(Figure.DONE_WEEKS, 4, " x "))
                .extracting(Problem::field)
                .containsExactly("reason");
        assertThat(refused(Figure.DONE_WEEKS, 3, "because"))
                .extracting(Problem::key)
                .containsExactly("caseload.figure.same");
    }

    @Test
    void twoAtOnceAreToldOfEachOther() {
        var seen = value(Figure.STOPPED_TIMES).version();
        figures.say(administrator, Figure.STOPPED_TIMES, 4, "because", seen);
        assertThatThrownBy(() -> figures.say(administrator, Figure.STOPPED_TIMES, 5, "because", seen))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> figures.takeBack(administrator, Figure.STOPPED_TIMES, "because", seen))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void onlyAnAdministratorSeesAndSaysThem() {
        for (var role : Role.values()) {
            if (role != Role.ADMINISTRATOR) {
                var other = People.with(role);
                assertThatThrownBy(() -> figures.all(other)).isInstanceOf(NotAvailable.class);
                assertThatThrownBy(() -> figures.history(other)).isInstanceOf(NotAvailable.class);
                assertThatThrownBy(() -> figures.say(other, Figure.DONE_WEEKS, 4, "because", 0))
                        .isInstanceOf(NotAvailable.class);
                assertThatThrownBy(() -> figures.takeBack(other, Figure.DONE_WEEKS, "because", 0))
                        .isInstanceOf(NotAvailable.class);
            }
        }
    }
}
