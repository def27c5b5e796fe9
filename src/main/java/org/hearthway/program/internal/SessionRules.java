package org.hearthway.program.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Outcome;
import org.springframework.stereotype.Component;

/** What a family may say of a session. */
@Component
class SessionRules {

    /** A phone that had no signal brings ticks late; later than this they would rewrite what the clinic has seen. */
    static final int DAYS_BACK = 31;

    static final int NOTE = 2000;
    private static final int MOST = 10;

    private final ExerciseLibrary library;

    SessionRules(ExerciseLibrary library) {
        this.library = library;
    }

    List<Problem> check(Entry entry, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (library.find(entry.exercise()).isEmpty()) {
            problems.add(Problem.at("exercise", "program.said.exercise"));
        }
        problems.addAll(words(entry, today));
        return problems;
    }

    /** All but the exercise: a phone may tell of one that the library has no more. */
    List<Problem> words(Entry entry, LocalDate today) {
        var problems = new ArrayList<Problem>();
        var first = today.minusDays(DAYS_BACK);
        if (entry.day().isAfter(today) || entry.day().isBefore(first)) {
            problems.add(Problem.at("day", "program.said.day", first, today));
        }
        if ((entry.outcome() == Outcome.COULD_NOT) != entry.reason().isPresent()) {
            problems.add(Problem.at("reason", "program.said.reason"));
        }
        scale("effort", entry.effort(), problems);
        scale("pain", entry.pain(), problems);
        if ((entry.effort().isPresent() || entry.pain().isPresent())
                && entry.ratedBy().isEmpty()) {
            problems.add(Problem.at("ratedBy", "program.said.ratedBy"));
        }
        if (entry.note().length() > NOTE) {
            problems.add(Problem.at("note", "program.said.note", NOTE));
        }
        return problems;
    }

    private static void scale(String field, Optional<Integer> number, List<Problem> problems) {
        if (number.filter(n -> n < 0 || n > MOST).isPresent()) {
            problems.add(Problem.at(field, "program.said." + field, MOST));
        }
    }
}
