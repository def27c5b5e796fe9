package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What people have said about one child's way along a path: the day it began and the dates they gave.
 *
 * @param begun the day the path begins
 * @param given dates by stage; a stage that is not there follows its rule
 */
public record Course(LocalDate begun, Map<String, Given> given) {

    public Course {
        given = Map.copyOf(given);
    }

    /** The date a person gave to a stage, if any. */
    public Optional<Given> given(Template.Stage stage) {
        return Optional.ofNullable(given.get(stage.id()));
    }

    /**
     * A stage's first day as a person gave it.
     *
     * @param day the day; stands whatever the rule says
     * @param origin {@code ACTUAL} or {@code SET_BY_HAND}
     */
    public record Given(LocalDate day, Plan.Origin origin) {

        public Given {
            if (origin == Plan.Origin.RULE) {
                throw new IllegalArgumentException("a rule gives its dates itself");
            }
        }
    }
}
