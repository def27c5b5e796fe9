package org.hearthway.path.engine;

import java.util.Map;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;

/**
 * The days a plan may use.
 *
 * @param clinic days on which the clinic is open
 * @param visits days on which a kind of visit is done, by kind; a kind that is not there is done on every open day
 * @param seasons days of a season, by its identifier
 * @param known the days of which all this is known; nothing is planned outside of it
 */
public record Calendar(Days clinic, Map<String, Days> visits, Map<String, Days> seasons, Span known) {

    public Calendar {
        visits = Map.copyOf(visits);
        seasons = Map.copyOf(seasons);
    }

    /** A clinic with these open days, and nothing more to know. */
    public static Calendar of(Days clinic, Span known) {
        return new Calendar(clinic, Map.of(), Map.of(), known);
    }

    /** The days of a kind of visit. */
    Days visit(String kind) {
        return visits.getOrDefault(kind, clinic);
    }

    /** The days of a season; all of them when it is not known. */
    Days season(String season) {
        return seasons.getOrDefault(season, Days.ALL);
    }
}
