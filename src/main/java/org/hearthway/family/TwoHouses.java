package org.hearthway.family;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Circle;
import org.hearthway.base.AccountId;
import org.hearthway.child.Homes;
import org.hearthway.child.engine.TwoHomes;
import org.springframework.stereotype.Component;

/** Says in which home a child's day ends, when there are two and both have nights entered. */
@Component
class TwoHouses {

    private final Homes homes;
    private final Circle circle;

    TwoHouses(Homes homes, Circle circle) {
        this.homes = homes;
        this.circle = circle;
    }

    /** The nights of a child with the names that the family uses. */
    record Nights(TwoHomes homes, Map<AccountId, String> names) {

        /** In whose home the night of a day is; empty when it is nobody's or claimed twice: a guess would send a child astray. */
        Optional<String> on(Reader reader, LocalDate day, boolean tonight) {
            var who = homes.on(day);
            if (who.size() != 1) {
                return Optional.empty();
            }
            var one = who.get(0);
            return one.equals(reader.viewer().account())
                    ? Optional.of(reader.say(tonight ? "family.tonight.own" : "family.home.own"))
                    : Optional.ofNullable(names.get(one))
                            .map(name -> reader.say(tonight ? "family.tonight" : "family.home", name));
        }
    }

    Nights of(Reader reader) {
        var nights = homes.nights(reader.viewer(), reader.id());
        var names = new HashMap<AccountId, String>();
        if (nights.areKnown()) {
            circle.members(reader.viewer(), reader.id())
                    .forEach(member -> names.put(member.account(), first(member.name())));
        }
        return new Nights(nights, Map.copyOf(names));
    }

    private static String first(String name) {
        return name.split(" ", 2)[0];
    }
}
