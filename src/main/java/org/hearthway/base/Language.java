package org.hearthway.base;

import java.util.Locale;

/** A language that content and screens speak. */
public enum Language {
    EN(Locale.US),
    ES(Locale.forLanguageTag("es-US"));

    private final Locale locale;

    Language(Locale locale) {
        this.locale = locale;
    }

    /** The locale whose rules for dates, numbers and plurals this language follows. */
    public Locale locale() {
        return locale;
    }

    /** The two-letter tag, as in {@code lang="es"}. */
    public String tag() {
        return locale.getLanguage();
    }

    /** The language of a locale; English for any that is not Spanish. */
    public static Language of(Locale locale) {
        return locale.getLanguage().equals("es") ? ES : EN;
    }
}
