package org.hearthway.child;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.hearthway.base.ChildId;

/**
 * A child as the clinic knows it.
 *
 * @param id identifier
 * @param data what people enter
 * @param version the version that was read; a change names it
 */
public record Child(ChildId id, ChildData data, long version) {

    /** What the child is called. */
    public String name() {
        return data.names().used();
    }

    /** Used name and surnames. */
    public String fullName() {
        return data.names().full();
    }

    /** Age in completed years on a day. */
    public int ageOn(LocalDate day) {
        return Period.between(data.birthDate(), day).getYears();
    }

    /** GMFCS level, 1 to 5, if recorded. */
    public Optional<Integer> gmfcs() {
        return data.gmfcs();
    }
}
