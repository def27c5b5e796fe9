package org.hearthway.program.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;
import org.hearthway.program.ui.EditedLine.Lie;
import org.junit.jupiter.api.Test;

class EditedLineTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 12);

    private static ProgramLine line(Rhythm rhythm, Load load) {
        var dose = new Dose(3, 10, 5, 0, 2);
        return new ProgramLine(
                "bridge",
                new Prescription(
                        dose,
                        Optional.of(45),
                        Side.LEFT,
                        load,
                        rhythm,
                        Optional.of(4),
                        Optional.of(new Progression(4, 5, 4, new Dose(3, 12, 5, 0, 2), load))),
                EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY, DayOfWeek.SUNDAY),
                DAY,
                Optional.of(DAY.plusDays(40)),
                "count aloud",
                Priority.FIRST,
                "trains with the team",
                List.of(new Excepted("hamstring-stretch", DAY, DAY.plusDays(9), "the surgeon agreed")));
    }

    private static List<String> unheld(EditedLine line) {
        return line.unheld(0).stream().map(Problem::field).toList();
    }

    @Test
    void givesBackWhatItWasGiven() {
        for (var load : List.of(new Load.Body(), new Load.Weight(1250), new Load.Weight(1), new Load.Band(3))) {
            for (var rhythm : List.of(
                    new Rhythm(4, Spread.ANY), new Rhythm(2, Spread.ANY), new Rhythm(3, Spread.NOT_FOLLOWING))) {
                var line = line(rhythm, load);
                assertThat(new EditedLine(line).line(DAY)).isEqualTo(line);
            }
        }
    }

    @Test
    void keepsTheWholeWeekAsItWasSaid() {
        var written = ProgramLine.of(
                "bridge",
                new Dose(1, 8, 0, 0, 1),
                Side.NONE,
                EnumSet.allOf(DayOfWeek.class),
                DAY,
                Optional.empty(),
                "");
        assertThat(new EditedLine(written).line(DAY)).isEqualTo(written);
        var daily = written.with(written.prescription().with(new Rhythm(7, Spread.DAILY)));
        assertThat(new EditedLine(daily).line(DAY)).isEqualTo(daily);
        var line = new EditedLine(daily);
        line.toggle(DayOfWeek.SUNDAY);
        assertThat(line.line(DAY).isOnFixedDays()).isTrue();
        assertThat(line.line(DAY).prescription().rhythm().days()).isEqualTo(6);
    }

    @Test
    void readsAWeightWithPointOrComma() {
        var line = new EditedLine(line(new Rhythm(2, Spread.ANY), new Load.Weight(1000)));
        line.type(Amount.KILOGRAMS, "1,25");
        assertThat(line.line(DAY).prescription().load()).isEqualTo(new Load.Weight(1250));
        line.type(Amount.KILOGRAMS, " 0.5 ");
        assertThat(line.line(DAY).prescription().load()).isEqualTo(new Load.Weight(500));
        assertThat(unheld(line)).isEmpty();
    }

    @Test
    void namesWhatCannotStandInALineAndKeepsItTyped() {
        var line = new EditedLine(line(new Rhythm(2, Spread.ANY), new Load.Weight(1000)));
        for (var typed : List.of("", "0", "a lot", "201", "-1", "1e9")) {
            line.type(Amount.KILOGRAMS, typed);
            assertThat(unheld(line)).as(typed).containsExactly("lines[0].load");
            assertThat(line.typed(Amount.KILOGRAMS)).isEqualTo(typed);
        }
        line.against(Against.BAND);
        line.type(Amount.BAND, "11");
        line.type(Amount.RHYTHM, "8");
        assertThat(unheld(line)).containsExactly("lines[0].load", "lines[0].rhythm");
        line.type(Amount.BAND, "2");
        line.type(Amount.RHYTHM, "2");
        line.addRule();
        line.type(Amount.RULE_PAIN, "11");
        assertThat(unheld(line)).containsExactly("lines[0].progression");
    }

    @Test
    void offersARuleThatAsksForMoreThanIsDone() {
        var line = new EditedLine(line(new Rhythm(2, Spread.ANY), new Load.Weight(1000)));
        line.dropRule();
        assertThat(line.line(DAY).prescription().progression()).isEmpty();
        line.addRule();
        assertThat(line.line(DAY).prescription().progression())
                .contains(new Progression(4, 5, 4, new Dose(3, 12, 5, 0, 2), new Load.Weight(1000)));
        assertThat(line.line(DAY).prescription().check(0)).isEmpty();
    }

    @Test
    void marksAllSevenForEveryDayAndHalfForSome() {
        var line = new EditedLine(line(new Rhythm(4, Spread.ANY), new Load.Body()));
        line.lie(Lie.ANY);
        assertThat(line.line(DAY).prescription().rhythm()).isEqualTo(new Rhythm(2, Spread.ANY));
        line.lie(Lie.DAILY);
        assertThat(line.line(DAY).days()).hasSize(7);
        assertThat(ProgramRules.check(List.of(line.line(DAY)), java.util.Map.of("bridge", true)))
                .isEmpty();
    }

    @Test
    void letsIdleLeaveGoAndKeepsLeaveWithAReason() {
        var line = new EditedLine(line(new Rhythm(4, Spread.ANY), new Load.Body()));
        line.leave(new EditedLine.Leave("standing", DAY, DAY.plusDays(3), " "));
        line.dropIdleLeaves(java.util.Set.of());
        assertThat(line.line(DAY).exceptions()).extracting(Excepted::tag).containsExactly("hamstring-stretch");
    }
}
