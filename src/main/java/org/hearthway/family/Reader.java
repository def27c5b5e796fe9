package org.hearthway.family;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.words.Words;

/**
 * For whom a page is made: the person, the child, the person's own clock and language.
 *
 * @param viewer who looks
 * @param child whose pages
 * @param instant now
 * @param words where the words stand
 */
record Reader(Viewer.Person viewer, Child child, Instant instant, Words words) {

    Language language() {
        return viewer.language();
    }

    ChildId id() {
        return child.id();
    }

    String name() {
        return child.name();
    }

    LocalDateTime now() {
        return local(instant);
    }

    LocalDate today() {
        return now().toLocalDate();
    }

    LocalDateTime local(Instant at) {
        return at.atZone(viewer.zone()).toLocalDateTime();
    }

    String say(String key, Object... args) {
        return words.say(language(), key, args);
    }

    /** The same, with the first letter made large: for sentences that begin with a spelled-out number or a weekday. */
    String sentence(String key, Object... args) {
        return large(say(key, args));
    }

    String say(Problem problem) {
        return words.say(language(), problem);
    }

    String text(Bilingual both) {
        return both.in(language());
    }

    String date(LocalDate day) {
        return words.date(language(), day);
    }

    String monthDay(LocalDate day) {
        return words.monthDay(language(), day);
    }

    String time(LocalDateTime at) {
        return words.time(language(), at.toLocalTime());
    }

    /** Parts one after another as people say them: "a, b and c". */
    String list(List<String> parts) {
        return words.list(language(), parts);
    }

    /** Where a page of this child stands. */
    String address(String place) {
        return "my/" + child.id() + "/" + place;
    }

    /** With its first letter large. */
    String large(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(language().locale()) + sentence.substring(1);
    }
}
