package org.hearthway.program.internal;

import org.springframework.stereotype.Component;

/** The muscle groups that exercises name, which rest on the day after strength work. */
@Component
class MuscleGroups extends NamedThings {

    MuscleGroups() {
        super("muscles.yaml");
    }
}
