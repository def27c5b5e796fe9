package org.hearthway.reminder.internal;

import java.time.LocalDateTime;
import java.time.ZoneId;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.engine.WallTime;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Fills the gaps of a text: day, time and office line. The link stays a gap until the message leaves. */
@Component
class Wording {

    private final MessageTexts texts;
    private final Words words;
    private final ClinicSettings clinic;

    Wording(MessageTexts texts, Words words, ClinicSettings clinic) {
        this.texts = texts;
        this.words = words;
        this.clinic = clinic;
    }

    /**
     * The subject of a text.
     *
     * @param wall the occasion's wall time
     * @param zone the zone of that time
     * @param reader the zone of the one who reads
     */
    String subject(String text, Language language, LocalDateTime wall, ZoneId zone, ZoneId reader) {
        return fill(texts.get(text).subject().in(language), language, wall, zone, reader);
    }

    /** The body of a text, filled likewise. */
    String body(String text, Language language, LocalDateTime wall, ZoneId zone, ZoneId reader) {
        return fill(texts.get(text).body().in(language), language, wall, zone, reader);
    }

    private String fill(String text, Language language, LocalDateTime wall, ZoneId zone, ZoneId reader) {
        var time = time(language, wall, zone, reader);
        // the point of "p. m." ends the sentence too
        var ended = time.endsWith(".") ? text.replace("{time}.", time) : text;
        return ended.replace("{day}", words.longDate(language, wall.toLocalDate()))
                .replace("{time}", time)
                .replace("{office}", clinic.officeLine());
    }

    /** The clinic's clock is the one to come by; who lives by another clock is told whose it is. */
    String time(Language language, LocalDateTime wall, ZoneId zone, ZoneId reader) {
        var time = words.time(language, wall.toLocalTime());
        var instant = WallTime.instant(wall, zone);
        var same = zone.getRules().getOffset(instant).equals(reader.getRules().getOffset(instant));
        return same ? time : words.say(language, "reminder.time.clinic", time);
    }
}
