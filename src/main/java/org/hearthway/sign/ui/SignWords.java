package org.hearthway.sign.ui;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.parts.Icon;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.words.Words;

/** The words of the folder's signs in one reader's language, moments on the clinic's clock. */
record SignWords(Words words, Language language, ZoneId zone) {

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    String text(Bilingual both) {
        return both.in(language);
    }

    String when(Instant moment) {
        var local = LocalDateTime.ofInstant(moment, zone);
        return say("sign.folder.when", local.toLocalDate(), local.toLocalTime());
    }

    static String style(Urgency urgency) {
        return switch (urgency) {
            case NOW -> "now";
            case URGENT -> "urgent";
            case HOURS -> "hours";
        };
    }

    static Icon icon(Urgency urgency) {
        return switch (urgency) {
            case NOW -> Icon.NOW;
            case URGENT -> Icon.URGENT;
            case HOURS -> Icon.HOURS;
        };
    }
}
