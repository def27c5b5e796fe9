package org.hearthway.program.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.path.ClinicValues;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ExerciseWords;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.UsualRules;
import org.hearthway.words.Words;

/** The editor's words in the language of the person who edits. */
record Say(
        Words words,
        ProgramWords program,
        ExerciseWords exercises,
        ExerciseLibrary library,
        ClinicValues values,
        Language language) {

    String say(String key, Object... args) {
        return words.say(language, "program.edit." + key, args);
    }

    /** The word for one of a group, such as a weekday or a kind. */
    String one(String group, Object which, Object... args) {
        return say(group + '.' + which, args);
    }

    String problem(Problem problem) {
        return words.say(language, problem);
    }

    /** The exercise's name; its identifier where the library no longer knows it. */
    String name(String exercise) {
        return program.name(language, exercise);
    }

    String muscles(Exercise exercise) {
        return exercise.muscles().in(language);
    }

    String dose(ProgramLine line) {
        return program.dose(language, line);
    }

    /** On which days, or on how many of them and how they lie. */
    String days(ProgramLine line) {
        return program.days(language, line);
    }

    /** What a therapist said beyond the dose: rest, how hard it should feel, when more is proposed. */
    List<String> beyondDose(ProgramLine line) {
        var prescription = line.prescription();
        var parts = new ArrayList<String>();
        prescription.restSeconds().ifPresent(rest -> parts.add(say("rest", rest)));
        prescription.effort().ifPresent(effort -> parts.add(say("effort", effort)));
        prescription.progression().ifPresent(rule -> parts.add(rule(line, rule)));
        return parts;
    }

    /** A rule for more in one sentence. */
    String rule(ProgramLine line, Progression rule) {
        var next = line.with(line.prescription().with(rule.next()).with(rule.nextLoad()));
        return say("rule.short", rule.days(), rule.effortUnder(), rule.painUnder(), dose(next));
    }

    /** What is usual of the exercise at the child's age, with its source, when the line lies outside of it. */
    Optional<String> outside(ProgramLine line, About about) {
        var usual = library.find(line.exercise()).map(exercise -> exercise.usualFor(about.years()));
        return usual.filter(range -> !UsualRules.outside(line, range).isEmpty())
                .map(range -> exercises.usual(language, range));
    }

    String date(LocalDate day) {
        return words.date(language, day);
    }

    /** Short name of the movement that a rule of care is about. */
    String movement(org.hearthway.path.engine.Plan.Care care) {
        return library.precaution(care.rule().tag()).orElse(care.rule().says()).in(language);
    }

    /** That the clinic itself says how long a rule of care holds, if it does. */
    Optional<String> own(org.hearthway.path.engine.Plan.Care care) {
        return values.why(care.rule()).map(says -> says.in(language));
    }
}
