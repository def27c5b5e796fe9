package org.hearthway.equipment.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Language;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.hearthway.words.Words;

/** The words of these screens in the language of the one who reads. */
record Labels(Words words, Language language) {

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    String day(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** "Left foot and ankle": where something is worn. */
    String where(Place place, Place.Side side) {
        return say("equipment.where", say("equipment.side." + side), say("equipment.place." + place));
    }

    /** What it is and where it is worn. */
    String name(Item item) {
        var name = item.kind().name().in(language);
        var where = item.data()
                .place()
                .map(place -> item.data()
                        .side()
                        .map(side -> where(place, side))
                        .orElseGet(() -> say("equipment.place." + place)));
        return where.map(at -> say("equipment.name.at", name, at)).orElse(name);
    }

    /** When it is worn: hours, then what the clinician wrote. */
    Optional<String> wear(Item.Wear wear) {
        var all = Stream.of(
                        wear.byDay().map(hours -> say("equipment.wear.day", hours)),
                        wear.byNight().map(hours -> say("equipment.wear.night", hours)),
                        Optional.of(wear.schedule()).filter(said -> !said.isBlank()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
        return Optional.of(all).filter(said -> !said.isEmpty());
    }
}
