package org.hearthway.surveillance;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.surveillance.engine.Watched;

/**
 * Checks of hips and spine. Dates follow from a published rhythm and are to be confirmed by the team; numbers are kept
 * as they were entered and never judged.
 */
public interface Surveillance {

    /** How many checks ahead an outlook names at most. */
    int AHEAD = 5;

    /**
     * The rule for one level, as it stands in the content.
     *
     * @param says the rule in words, for the team
     * @param source the publication, and what of it is from memory
     */
    record Rule(Bilingual says, String source) {}

    /**
     * What is watched and what the clinic keeps to for it.
     *
     * @param watched hips or spine
     * @param name in family words
     * @param visitKind identifier of the kind of visit at which it is checked
     * @param displacedFrom migration percentage from which a hip is displaced by {@code definition}; of hips only
     * @param definition whose definition that is
     * @param says what a family reads about it; empty while the clinic has not accepted it
     */
    record Matter(
            Watched watched,
            Bilingual name,
            String visitKind,
            Optional<Integer> displacedFrom,
            String definition,
            List<Bilingual> says) {
        public Matter {
            says = List.copyOf(says);
        }
    }

    /**
     * Which checks are to come. Tells dates alone, so that a family may read it.
     *
     * @param matter what is watched
     * @param level GMFCS level; while it is not known nothing has a date
     * @param rule the rule for that level; empty when the content has none
     * @param last day of the last recorded check
     * @param ahead in ascending order; empty when no date follows
     * @param seen what a record of a check names as seen
     */
    record Outlook(
            Matter matter,
            Optional<Integer> level,
            Optional<Rule> rule,
            Optional<LocalDate> last,
            List<Due> ahead,
            long seen) {
        public Outlook {
            ahead = List.copyOf(ahead);
        }

        /** The next check. */
        public Optional<Due> next() {
            return ahead.stream().findFirst();
        }
    }

    /** One for each that is watched; for anyone who may see the family's pages of the child. */
    List<Outlook> outlook(Viewer viewer, ChildId child);

    /** The same for every child that has a date to come; for staff and the machine. */
    Map<ChildId, List<Outlook>> all(Viewer viewer);

    /** The recorded checks, newest first; for the team. */
    List<Check> checks(Viewer viewer, ChildId child, Watched watched);

    /**
     * Records a check.
     *
     * @param seen see {@link Outlook#seen}
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else recorded one in between
     */
    void record(Viewer viewer, ChildId child, CheckData data, long seen);

    /**
     * Corrects a recorded check, or takes it back when it never took place.
     *
     * @param number which
     * @param data what it should say; empty to take it back
     * @param seen see {@link Outlook#seen}
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else recorded one in between
     */
    void correct(Viewer viewer, ChildId child, Watched watched, long number, Optional<CheckData> data, long seen);
}
