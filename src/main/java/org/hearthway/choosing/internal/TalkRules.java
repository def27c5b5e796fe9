package org.hearthway.choosing.internal;

import static org.hearthway.choosing.Choosing.NOTE_MAX;
import static org.hearthway.choosing.Choosing.PRESENT_MAX;
import static org.hearthway.choosing.Choosing.PRESENT_MIN;
import static org.hearthway.choosing.Choosing.REASON_MAX;
import static org.hearthway.choosing.Choosing.REASON_MIN;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Fact.Origin;

/** What may be entered and written down. */
final class TalkRules {

    private TalkRules() {}

    /** Refuses facts, choices and notes that cannot be taken; says all that is wrong at once. */
    static void facts(Map<String, Answer.Data> entered, Map<String, Fact> known) {
        var problems = new ArrayList<Problem>();
        new TreeMap<>(entered).forEach((id, data) -> {
            var fact = known.get(id);
            if (fact == null || fact.origin() != Origin.ASKED) {
                problems.add(Problem.at(id, "choosing.problem.fact"));
            } else if (!data.choices().stream()
                    .allMatch(choice -> fact.choice(choice).isPresent())) {
                problems.add(Problem.at(id, "choosing.problem.choice"));
            } else if (!fact.many() && data.choices().size() > 1) {
                problems.add(Problem.at(id, "choosing.problem.one"));
            }
            if (data.note().strip().length() > NOTE_MAX) {
                problems.add(Problem.at(id, "choosing.problem.note", NOTE_MAX));
            }
        });
        Invalid.ifAny(problems);
    }

    /** Refuses a decision that cannot be taken; says all that is wrong at once. */
    static void decision(Decision.Data data, List<Choosing.Way> ways, LocalDate born, LocalDate today) {
        var problems = new ArrayList<Problem>();
        data.path()
                .filter(path -> ways.stream().noneMatch(way -> way.id().equals(path)))
                .ifPresent(path -> problems.add(Problem.at("path", "choosing.problem.path")));
        if (data.day().isBefore(born) || data.day().isAfter(today)) {
            problems.add(Problem.at("day", "choosing.problem.day", today));
        }
        length(problems, "present", data.present(), PRESENT_MIN, PRESENT_MAX);
        length(problems, "reason", data.reason(), REASON_MIN, REASON_MAX);
        Invalid.ifAny(problems);
    }

    private static void length(List<Problem> problems, String field, String text, int least, int most) {
        var length = text.strip().length();
        if (length < least || length > most) {
            problems.add(Problem.at(field, "choosing.problem." + field, least, most));
        }
    }
}
