package org.hearthway.access.ui;

import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.words.Words;

/** Says in words what the trail keeps as short marks. A mark that nobody has words for stands as it is. */
final class TrailWords {

    private static final String DID = "access.trail.did.";
    private static final String BY = "access.trail.by.";

    private final Words words;
    private final Language language;
    private final People people;

    TrailWords(Words words, Language language, People people) {
        this.words = words;
        this.language = language;
        this.people = people;
    }

    /** Who did it, from a tag such as {@code machine:reminders}. */
    String who(Viewer viewer, String tag) {
        var kind = tag.contains(":") ? tag.substring(0, tag.indexOf(':')) : "";
        if (kind.equals("machine")) {
            return say(BY + mark(tag), say("access.trail.by.machine", tag));
        }
        if (kind.equals("link")) {
            return say("access.trail.by.link", tag);
        }
        var name = people.name(viewer, tag);
        return name.equals(tag) ? say("access.trail.by.somebody", tag) : name;
    }

    /** What was done, from a mark such as {@code changed: VisitMoved} or {@code invited: account …}. */
    String what(Viewer viewer, String what) {
        var named = people.named(viewer, what);
        var known = say(DID + mark(what), "");
        if (!known.isEmpty()) {
            return known;
        }
        var colon = named.indexOf(": ");
        if (colon < 0) {
            return named;
        }
        var rest = named.substring(colon + 2);
        var verb = say(DID + mark(named.substring(0, colon)), named.substring(0, colon));
        return words.say(language, "access.trail.about", verb, rest);
    }

    private String say(String key, String otherwise) {
        return words.keys(language).contains(key) ? words.say(language, key) : otherwise;
    }

    /** A mark as the end of a key: small letters and digits, everything else a hyphen. */
    static String mark(String text) {
        return text.replaceAll("([a-z])([A-Z])", "$1-$2")
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
    }
}
