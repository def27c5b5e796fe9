package org.hearthway.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.ProgramLine;

/** A dose in words: "3 holds of 30 seconds, each side · 8 minutes". */
final class DoseWords {

    private static final int KILOGRAM = 1000;

    /** One cell of the dose on an exercise's page: a large number or word, and what it counts. */
    record Cell(String large, String small) {}

    private DoseWords() {}

    /** The dose, its side, how often, and the minutes it takes when they are not the dose itself. */
    static String said(Reader reader, ProgramLine line, int minutes) {
        var dose = amount(reader, line);
        return line.dose().minutes() > 0 ? dose : dose + " · " + reader.say("family.minutes", minutes);
    }

    /** The dose, its side and how often. */
    static String amount(Reader reader, ProgramLine line) {
        var dose = line.dose();
        var words = new StringBuilder(core(reader, dose));
        if (line.side() != ProgramLine.Side.NONE) {
            words.append(", ").append(reader.say("family.side." + line.side()));
        }
        load(reader, line.prescription().load())
                .ifPresent(load -> words.append(", ").append(load));
        if (dose.timesADay() > 1) {
            words.append(", ").append(reader.say("family.dose.a-day", dose.timesADay()));
        }
        return words.toString();
    }

    private static Optional<String> load(Reader reader, Load load) {
        if (load instanceof Load.Weight weight) {
            return Optional.of(
                    weight.grams() % KILOGRAM == 0
                            ? reader.say("family.dose.kilograms", weight.grams() / KILOGRAM)
                            : reader.say("family.dose.grams", weight.grams()));
        }
        return load instanceof Load.Band band
                ? Optional.of(reader.say("family.dose.band", band.step()))
                : Optional.empty();
    }

    private static String core(Reader reader, Dose dose) {
        if (dose.minutes() > 0) {
            var minutes = reader.say("family.minutes", dose.minutes());
            return dose.sets() > 1 ? reader.say("family.dose.sets-of-minutes", dose.sets(), minutes) : minutes;
        }
        if (dose.holdSeconds() > 0) {
            var holds = reader.say("family.dose.holds", dose.repetitions(), dose.holdSeconds());
            return dose.sets() > 1 ? reader.say("family.dose.rounds-of", dose.sets(), holds) : holds;
        }
        return dose.sets() > 1
                ? reader.say("family.dose.rounds-of", dose.sets(), dose.repetitions())
                : reader.say("family.dose.times", dose.repetitions());
    }

    /** Two or three cells. */
    static List<Cell> cells(Reader reader, ProgramLine line) {
        var dose = line.dose();
        var cells = new ArrayList<Cell>();
        if (dose.minutes() > 0) {
            cells.add(counted(reader, "minutes", dose.minutes()));
        } else {
            if (dose.holdSeconds() > 0) {
                cells.add(counted(reader, "seconds", dose.holdSeconds()));
            }
            cells.add(counted(reader, "times", dose.repetitions()));
        }
        if (dose.sets() > 1 && cells.size() < 3) {
            cells.add(counted(reader, "rounds", dose.sets()));
        }
        if (line.side() != ProgramLine.Side.NONE && cells.size() < 3) {
            cells.add(new Cell(
                    reader.say("family.dose.cell.side." + line.side()),
                    reader.say("family.dose.cell.side." + line.side() + ".of")));
        }
        if (dose.timesADay() > 1 && cells.size() < 3) {
            cells.add(counted(reader, "a-day", dose.timesADay()));
        }
        return cells;
    }

    private static Cell counted(Reader reader, String what, int number) {
        return new Cell(reader.say("family.number", number), reader.say("family.dose.cell." + what, number));
    }
}
