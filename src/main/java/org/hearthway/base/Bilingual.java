package org.hearthway.base;

/** One text said in both languages; neither is blank. */
public record Bilingual(String en, String es) {

    public Bilingual {
        if (en.isBlank() || es.isBlank()) {
            throw new IllegalArgumentException("a text needs both languages");
        }
    }

    /** The same text for both, for names and numbers that are not translated. */
    public static Bilingual same(String text) {
        return new Bilingual(text, text);
    }

    /** The text in the language asked for. */
    public String in(Language language) {
        return switch (language) {
            case EN -> en;
            case ES -> es;
        };
    }
}
