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
import org.hearthway.child.Helpers.Glimpse;
import org.hearthway.words.Words;

/**
 * For whom a page is made: the person, the child, the person's own clock and language.
 *
 * @param viewer who looks
 * @param child whose pages: no more of the child than every page needs
 * @param base where the pages stand in an address: the family's, or those of a helper
 * @param instant now
 * @param words where the words stand
 */
record Reader(Viewer.Person viewer, Glimpse child, String base, Instant instant, Words words) {

    static final String FAMILY = "my";
    static final String HELPER = "help";

    /** For somebody of the family. */
    Reader(Viewer.Person viewer, Child child, Instant instant, Words words) {
        this(viewer, new Glimpse(child.id(), child.name(), child.data().skinTone()), FAMILY, instant, words);
    }

    boolean isHelper() {
        return base.equals(HELPER);
    }

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
        return base + "/" + child.id() + "/" + place;
    }

    /** With its first letter large. */
    String large(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(language().locale()) + sentence.substring(1);
    }
}
