package org.hearthway.medicine;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.medicine.engine.ToxinInterval;
import org.hearthway.medicine.engine.ToxinUnits;

/** Toxin sessions, given and planned. Units belong to their preparation and are added within one only. */
public interface ToxinSessions {

    /** Most characters of a preparation's name. */
    int PREPARATION_MOST = 80;

    /** Most characters of who gave it. */
    int NAME_MOST = 120;

    /** Most characters of a note, or of a reason for an early session. */
    int NOTE_MOST = 500;

    /** Most places in one session. */
    int PLACES_MOST = 40;

    /** Where a session stands. */
    enum State {
        PLANNED,
        GIVEN,
        /** Will not be, or was written down by mistake. */
        CANCELLED
    }

    /** The child's own side. */
    enum Side {
        LEFT,
        RIGHT
    }

    /**
     * Where a toxin is given.
     *
     * @param id identifier, such as {@code gastrocnemius}
     * @param name as the trade says it
     * @param family as families say it
     */
    record Muscle(String id, Bilingual name, Bilingual family) {}

    /**
     * One place as typed.
     *
     * @param units empty when nothing was typed
     * @param preparation the name on the vial, 1 to {@value #PREPARATION_MOST} characters
     */
    record PlaceData(Optional<String> muscle, Optional<Side> side, Optional<BigDecimal> units, String preparation) {}

    /** One place of a session. */
    record Injection(String muscle, Side side, ToxinUnits units) {}

    /**
     * What a person types.
     *
     * @param on of a given session at most today, of a planned one from today to two years ahead
     * @param places of a given session 1 to {@value #PLACES_MOST}; of a planned one none is needed
     * @param givenBy who gave it; needed for a given one
     * @param note at most {@value #NOTE_MOST} characters; needed when a session is taken back
     * @param early why a planned one comes before the clinic's interval; from a physician
     */
    record SessionData(State state, LocalDate on, List<PlaceData> places, String givenBy, String note, String early) {
        public SessionData {
            places = List.copyOf(places);
        }
    }

    /**
     * One version of a session. Later ones supersede earlier ones; none is altered.
     *
     * @param version 1, 2, 3 … within the session
     * @param early why it was planned before the clinic's interval; empty when it was not
     * @param by who wrote it down
     */
    record Session(
            SessionId id,
            ChildId child,
            long version,
            State state,
            LocalDate on,
            List<Injection> injections,
            String givenBy,
            String note,
            String early,
            AccountId by,
            Instant at) {
        public Session {
            injections = List.copyOf(injections);
        }

        /** A total for each preparation. */
        public List<ToxinUnits> totals() {
            return ToxinUnits.totals(injections.stream().map(Injection::units).toList());
        }
    }

    /** A muscle as the family is told of it, and the sides. */
    record Place(Bilingual muscle, Set<Side> sides) {}

    /**
     * What the family sees; no units.
     *
     * @param last day of the session given last
     * @param places where, in that session
     * @param notBefore first day for the next one
     * @param planned the day set for the next one
     */
    record Shown(
            Optional<LocalDate> last, List<Place> places, Optional<LocalDate> notBefore, Optional<LocalDate> planned) {
        public Shown {
            places = List.copyOf(places);
        }
    }

    /** The clinic's least time between two sessions; to be confirmed by each clinic. */
    ToxinInterval interval();

    /** The muscles that the content knows, by their English trade name. */
    List<Muscle> muscles();

    /** The sessions as the family sees them. */
    Shown shown(Viewer viewer, ChildId child);

    /** The newest version of each session, latest day first; for the team. */
    List<Session> all(Viewer viewer, ChildId child);

    /**
     * Writes down a session.
     *
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    Session enter(Viewer viewer, ChildId child, SessionData data);

    /**
     * Writes a session anew: given after it was planned, corrected, or taken back.
     *
     * @param seen the version that the person saw as newest
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else wrote it in between
     */
    Session change(Viewer viewer, ChildId child, SessionId session, SessionData data, long seen);
}
