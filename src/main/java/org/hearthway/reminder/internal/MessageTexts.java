package org.hearthway.reminder.internal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** The texts of messages and calls, one file each in {@code content/messages/texts}. */
@Component
class MessageTexts implements ContentKind {

    /** Whom a text is for. What travels as mail must stay neutral; staff see the others after signing in. */
    enum Reader {
        FAMILY,
        /** Of the clinic, on the screen. */
        STAFF,
        /** Of the clinic, by mail. */
        TEAM
    }

    /** A text with gaps such as {@code {day}}. */
    record Text(String id, Reader to, Bilingual subject, Bilingual body) {}

    /** The gap that is filled when the message leaves, not before: the kept text holds no way in. */
    static final String LINK = "{link}";

    private static final Pattern GAP = Pattern.compile("\\{[^}]*}");
    private static final Set<String> SUBJECT_GAPS = Set.of("{day}", "{time}");
    private static final Set<String> BODY_GAPS = Set.of("{day}", "{time}", "{office}", LINK);

    private final Map<String, Text> texts = new HashMap<>();
    private final Map<Text, Entry> files = new LinkedHashMap<>();
    private final BannedWords banned;

    MessageTexts(BannedWords banned) {
        this.banned = banned;
    }

    @Override
    public String place() {
        return "messages/texts";
    }

    @Override
    public void read(Entry file) {
        var text =
                new Text(file.id(), file.choice("to", Reader.class), file.bilingual("subject"), file.bilingual("body"));
        texts.put(text.id(), text);
        files.put(text, file);
    }

    /** Each gap is one we can fill, and no word of a text that travels gives the child away. */
    @Override
    public void check() {
        files.forEach((text, file) -> {
            for (var language : Language.values()) {
                gaps(file, "subject", text.subject().in(language), SUBJECT_GAPS);
                gaps(file, "body", text.body().in(language), BODY_GAPS);
                if (text.to() != Reader.STAFF) {
                    neutral(file, "subject", text.subject().in(language));
                    neutral(file, "body", text.body().in(language));
                }
            }
            if (text.subject().en().contains("\n") || text.subject().es().contains("\n")) {
                file.wrong("subject", "\"subject\" has more than one line", "one line");
            }
        });
        files.clear();
    }

    private static void gaps(Entry file, String key, String text, Set<String> known) {
        GAP.matcher(text)
                .results()
                .map(MatchResult::group)
                .filter(gap -> !known.contains(gap))
                .forEach(gap -> file.wrong(
                        key,
                        "\"" + key + "\" has the gap " + gap,
                        "one of " + String.join(", ", new java.util.TreeSet<>(known))));
    }

    private void neutral(Entry file, String key, String text) {
        banned.firstIn(text)
                .ifPresent(word -> file.wrong(
                        key,
                        "\"" + key + "\" says \"" + word + "\", which tells a stranger about the child",
                        "neutral words"));
    }

    boolean has(String id) {
        return texts.containsKey(id);
    }

    /**
     * A text that the rules name.
     *
     * @throws IllegalArgumentException when the content has none
     */
    Text get(String id) {
        var text = texts.get(id);
        if (text == null) {
            throw new IllegalArgumentException("no message text " + id);
        }
        return text;
    }
}
