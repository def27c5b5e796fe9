package org.hearthway.figure.internal;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hearthway.base.Language;
import org.hearthway.figure.Figure.Shown;

/** The last part of a picture's address: {@code bridge-end-right-2-en}. */
record FigureName(String id, Shown shown, boolean left, int tone, Language language) {

    private static final Pattern TEXT =
            Pattern.compile("([a-z0-9-]+)-(start|end|moving|paper)-(left|right)-([0-4])-(en|es)");

    static Optional<FigureName> of(String text) {
        var parts = TEXT.matcher(text);
        return parts.matches()
                ? Optional.of(new FigureName(
                        parts.group(1),
                        Shown.valueOf(parts.group(2).toUpperCase(Locale.ROOT)),
                        parts.group(3).equals("left"),
                        Integer.parseInt(parts.group(4)),
                        Language.valueOf(parts.group(5).toUpperCase(Locale.ROOT))))
                : Optional.empty();
    }

    String text() {
        return id + "-" + shown.name().toLowerCase(Locale.ROOT) + (left ? "-left-" : "-right-") + tone + "-"
                + language.tag();
    }
}
