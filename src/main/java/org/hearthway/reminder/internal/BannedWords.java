package org.hearthway.reminder.internal;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** The words that would tell a stranger what the child has, from {@code content/messages/banned.yaml}. */
@Component
class BannedWords implements ContentKind {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:-[\\p{L}\\p{N}]+)*");

    private final List<String> whole = new ArrayList<>();
    private final List<String> stems = new ArrayList<>();

    @Override
    public String place() {
        return "messages/banned.yaml";
    }

    @Override
    public void read(Entry file) {
        for (var group : List.of("drugs", "devices", "diagnoses", "body", "procedures", "clinics")) {
            var words = file.texts(group);
            if (words.isEmpty()) {
                file.wrong(group, "\"" + group + "\" names no word", "a list of words");
            }
            for (var word : words) {
                var plain = plain(word);
                if (plain.endsWith("*")) {
                    stems.add(plain.substring(0, plain.length() - 1));
                } else {
                    whole.add(plain);
                }
            }
        }
    }

    /** The first banned word of a text, if there is one. */
    Optional<String> firstIn(String text) {
        return WORD.matcher(plain(text))
                .results()
                .map(found -> found.group())
                .filter(this::isBanned)
                .findFirst();
    }

    private boolean isBanned(String word) {
        return whole.contains(word) || stems.stream().anyMatch(word::startsWith);
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
