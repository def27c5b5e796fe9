package org.hearthway.program.ui;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.path.ClinicValues;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.words.Words;

/** The editor's words in the language of the person who edits. */
record Say(Words words, ProgramWords program, ExerciseLibrary library, ClinicValues values, Language language) {

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
