package org.hearthway.program;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramDiff.Field;
import org.hearthway.program.engine.ProgramDiff.LineDiff;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Doses, days and differences between versions in family words. */
@Component
public class ProgramWords {

    /** More sentences than these are counted, not told. */
    private static final int TOLD = 4;

    /** Characters of what is told in the news. */
    private static final int ROOM = 1000;

    private static final int KILOGRAM = 1000;

    private static final Set<DayOfWeek> WORKING = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private final Words words;
    private final ExerciseLibrary library;

    ProgramWords(Words words, ExerciseLibrary library) {
        this.words = words;
        this.library = library;
    }

    /** "2 rounds of 10, each side". */
    public String dose(Language language, ProgramLine line) {
        var dose = line.dose();
        var parts = new ArrayList<>(List.of(amount(language, dose)));
        if (line.side() != ProgramLine.Side.NONE) {
            parts.add(side(language, line.side()));
        }
        if (!(line.prescription().load() instanceof Load.Body)) {
            parts.add(load(language, line.prescription().load()));
        }
        if (dose.timesADay() > 1) {
            parts.add(words.say(language, "program.dose.aDay", dose.timesADay()));
        }
        return String.join(", ", parts);
    }

    /** "with 500 g", "with band 2", "without a load". */
    public String load(Language language, Load load) {
        if (load instanceof Load.Weight weight) {
            return weight.grams() % KILOGRAM == 0
                    ? words.say(language, "program.load.kilograms", weight.grams() / KILOGRAM)
                    : words.say(language, "program.load.grams", weight.grams());
        }
        return load instanceof Load.Band band
                ? words.say(language, "program.load.band", band.step())
                : words.say(language, "program.load.body");
    }

    /** On which days a line is: the days themselves, or how many of them and how they lie. */
    public String days(Language language, ProgramLine line) {
        if (line.isOnFixedDays()) {
            return days(language, line.days());
        }
        var rhythm = line.prescription().rhythm();
        var often = words.say(language, "program.rhythm." + rhythm.spread().name(), rhythm.days());
        return line.days().size() == DayOfWeek.values().length
                ? often
                : words.say(language, "program.rhythm.of", often, days(language, line.days()));
    }

    private String amount(Language language, Dose dose) {
        if (dose.minutes() > 0) {
            return words.say(language, "program.dose.minutes", dose.sets(), dose.minutes());
        }
        return dose.holdSeconds() > 0
                ? words.say(language, "program.dose.holds", dose.sets(), dose.repetitions(), dose.holdSeconds())
                : words.say(language, "program.dose.times", dose.sets(), dose.repetitions());
    }

    /** "each side". */
    public String side(Language language, ProgramLine.Side side) {
        return words.say(
                language,
                switch (side) {
                    case NONE -> "program.side.none";
                    case LEFT -> "program.side.left";
                    case RIGHT -> "program.side.right";
                    case EACH -> "program.side.each";
                });
    }

    /** "every day", "Monday to Friday", "Mon, Wed and Fri". */
    public String days(Language language, Set<DayOfWeek> days) {
        if (days.isEmpty()) {
            return words.say(language, "program.days.none");
        }
        if (days.size() == DayOfWeek.values().length) {
            return words.say(language, "program.days.all");
        }
        if (days.equals(WORKING)) {
            return words.say(language, "program.days.working");
        }
        var names = days.stream()
                .map(day -> words.shortWeekday(language, LocalDate.EPOCH.with(TemporalAdjusters.nextOrSame(day))))
                .toList();
        return words.list(language, names);
    }

    /** The exercise's name; the identifier where the library no longer knows it. */
    public String name(Language language, String exercise) {
        return library.find(exercise).map(e -> e.name().in(language)).orElse(exercise);
    }

    /** What is different, a sentence each, in the order of the program. */
    public List<String> differences(Language language, ProgramDiff diff) {
        var told = new ArrayList<String>();
        for (var change : diff.changes()) {
            told.addAll(difference(language, change));
        }
        if (diff.changes().stream().anyMatch(LineDiff::moved)) {
            told.add(words.say(language, "program.changed.order"));
        }
        return told;
    }

    /**
     * What a new version tells the family.
     *
     * @param toFamily the word that comes with it, told as it was typed in both languages; may be empty
     */
    public Bilingual told(List<ProgramLine> before, List<ProgramLine> after, String toFamily) {
        return new Bilingual(told(Language.EN, before, after, toFamily), told(Language.ES, before, after, toFamily));
    }

    /** As many sentences as there is room for, the rest counted. */
    private String told(Language language, List<ProgramLine> before, List<ProgramLine> after, String toFamily) {
        for (int most = TOLD; most > 0; most--) {
            var told = told(language, before, after, most);
            var whole = toFamily.isBlank() ? told : words.say(language, "program.changed.word", told, toFamily);
            if (whole.length() <= ROOM) {
                return whole;
            }
        }
        return words.say(
                language, "program.changed.word", words.say(language, "program.changed.new-version"), toFamily);
    }

    private String told(Language language, List<ProgramLine> before, List<ProgramLine> after, int most) {
        if (before.isEmpty() && !after.isEmpty()) {
            return words.say(language, "program.changed.first", after.size());
        }
        var sentences = differences(language, ProgramDiff.between(before, after));
        if (sentences.isEmpty()) {
            return words.say(language, "program.changed.nothing");
        }
        var first = String.join(" ", sentences.subList(0, Math.min(most, sentences.size())));
        return sentences.size() <= most
                ? first
                : words.say(language, "program.changed.more", first, sentences.size() - most);
    }

    private List<String> difference(Language language, LineDiff change) {
        var line = change.line();
        var name = name(language, line.exercise());
        if (change.isNew()) {
            return List.of(
                    words.say(language, "program.changed.new", name, dose(language, line), days(language, line)));
        }
        if (change.isTakenOut()) {
            return List.of(words.say(language, "program.changed.out", name));
        }
        var before = change.before().orElseThrow();
        var fields = new ArrayList<>(change.fields());
        var sentences = new ArrayList<String>();
        if (fields.contains(Field.MINUTES) && fields.contains(Field.REPETITIONS)) {
            fields.removeAll(List.of(Field.MINUTES, Field.REPETITIONS, Field.SETS, Field.HOLD));
            sentences.add(words.say(language, "program.changed.dose", name, dose(language, line)));
        }
        fields.forEach(field -> sentences.add(field(language, name, field, before, line)));
        return sentences;
    }

    private String field(Language language, String name, Field field, ProgramLine before, ProgramLine after) {
        var was = before.dose();
        var is = after.dose();
        return switch (field) {
            case SETS -> number(language, "program.changed.sets", name, is.sets(), was.sets());
            case REPETITIONS ->
                number(language, "program.changed.repetitions", name, is.repetitions(), was.repetitions());
            case HOLD -> hold(language, name, was, is);
            case MINUTES -> number(language, "program.changed.minutes", name, is.minutes(), was.minutes());
            case TIMES_A_DAY -> number(language, "program.changed.aDay", name, is.timesADay(), was.timesADay());
            case SIDE -> words.say(language, "program.changed.side", name, side(language, after.side()));
            case DAYS ->
                words.say(language, "program.changed.days", name, days(language, after), days(language, before));
            case REST -> rest(language, name, after);
            case LOAD ->
                words.say(
                        language,
                        "program.changed.load",
                        name,
                        load(language, after.prescription().load()));
            case EFFORT -> effort(language, name, after);
            case PROGRESSION ->
                words.say(
                        language,
                        after.prescription().progression().isEmpty()
                                ? "program.changed.progression.none"
                                : "program.changed.progression",
                        name);
            case PRIORITY ->
                words.say(
                        language, "program.changed.priority." + after.priority().name(), name);
            case EXCEPTIONS ->
                words.say(
                        language,
                        after.exceptions().isEmpty() ? "program.changed.exceptions.none" : "program.changed.exceptions",
                        name);
            case FROM -> words.say(language, "program.changed.from", name, after.from());
            case UNTIL -> until(language, name, after.until());
            case NOTE ->
                words.say(
                        language, after.note().isBlank() ? "program.changed.note.none" : "program.changed.note", name);
        };
    }

    private String number(Language language, String key, String name, int is, int was) {
        return words.say(language, key, name, is, was);
    }

    private String hold(Language language, String name, Dose was, Dose is) {
        return is.holdSeconds() == 0
                ? words.say(language, "program.changed.hold.none", name)
                : number(language, "program.changed.hold", name, is.holdSeconds(), was.holdSeconds());
    }

    private String rest(Language language, String name, ProgramLine is) {
        return is.prescription()
                .restSeconds()
                .map(rest -> words.say(language, "program.changed.rest", name, rest))
                .orElseGet(() -> words.say(language, "program.changed.rest.usual", name));
    }

    private String effort(Language language, String name, ProgramLine is) {
        return is.prescription()
                .effort()
                .map(target -> words.say(language, "program.changed.effort", name, target))
                .orElseGet(() -> words.say(language, "program.changed.effort.none", name));
    }

    private String until(Language language, String name, Optional<LocalDate> until) {
        return until.map(last -> words.say(language, "program.changed.until", name, last))
                .orElseGet(() -> words.say(language, "program.changed.until.none", name));
    }
}
