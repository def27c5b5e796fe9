package org.hearthway.base;

import java.util.List;
import java.util.stream.Collectors;

/** What was typed cannot be taken; says everything that is wrong at once. */
public class Invalid extends RuntimeException {

    private final transient List<Problem> problems;

    /** Everything that is wrong, at least one problem. */
    public Invalid(List<Problem> problems) {
        super(problems.stream().map(Problem::key).collect(Collectors.joining(", ")));
        this.problems = List.copyOf(problems);
    }

    /** The one thing that is wrong. */
    public Invalid(Problem problem) {
        this(List.of(problem));
    }

    /** All that is wrong, at least one. */
    public List<Problem> problems() {
        return problems;
    }

    /** Throws when there is anything in the list. */
    public static void ifAny(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new Invalid(problems);
        }
    }
}
