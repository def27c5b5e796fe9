package org.hearthway.path;

import java.time.DayOfWeek;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;

/** The kinds of visit that a stage may ask for; a port, implemented where visits are kept. */
public interface VisitKindNames {

    /** Identifiers of all kinds; asked only after all content was read. */
    Set<String> names();

    /** A kind's name; empty when it is not known. */
    Optional<Bilingual> name(String kind);

    /** Weekdays on which a kind of visit is done; empty when it is done on every open day. */
    Set<DayOfWeek> weekdays(String kind);
}
