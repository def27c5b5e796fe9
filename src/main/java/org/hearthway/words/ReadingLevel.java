package org.hearthway.words;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How hard a text is to read, by published formulas. Words, sentences and syllables are counted by rules of thumb:
 * take the result as good to about one grade in English.
 *
 * @param words number of words, at least 1
 * @param sentences number of sentences, at least 1
 * @param syllables number of syllables, at least 1
 */
public record ReadingLevel(int words, int sentences, int syllables) {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:[’'][\\p{L}]+)*");
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?…]+(?=\\s|$|[”\"»)])");
    private static final Pattern ENGLISH_VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern SILENT_END =
            // of "tired" but not "needed", of "makes" but not "faces", of "cause" but not "little"
            Pattern.compile("(?<![td])ed$|(?<!s|x|z|c|g|ch|sh)es$|(?<![^aeiou]l)e$");
    private static final Pattern SPANISH_NUCLEUS =
            // two strong vowels part, an accented weak one parts from its neighbour, all else flows together
            Pattern.compile("[iuü]?[aeoáéó][iuüy]?|[íú]|[iuü][iuü]?|(?<![aeiouáéíóú])y(?![aeiouáéíóú])");

    public ReadingLevel {
        if (words < 1 || sentences < 1 || syllables < 1) {
            throw new IllegalArgumentException("a text has at least one word, one sentence and one syllable");
        }
    }

    /** Counts an English text that has at least one word. */
    public static ReadingLevel english(String text) {
        return count(text, ReadingLevel::englishSyllables);
    }

    /** Counts a Spanish text that has at least one word. */
    public static ReadingLevel spanish(String text) {
        return count(text, ReadingLevel::spanishSyllables);
    }

    private static ReadingLevel count(String text, java.util.function.ToIntFunction<String> syllables) {
        List<String> words = WORD.matcher(text)
                .results()
                .map(found -> found.group().toLowerCase(Locale.ROOT))
                .collect(Collectors.toList());
        var ends = (int) SENTENCE_END.matcher(text).results().count();
        return new ReadingLevel(
                words.size(),
                Math.max(1, ends),
                words.stream().mapToInt(syllables).sum());
    }

    private static int englishSyllables(String word) {
        var letters = word.replaceAll("[’']", "");
        if (!letters.chars().allMatch(Character::isLetter)) {
            return 1;
        }
        var spoken = SILENT_END.matcher(letters).replaceFirst("");
        var count = (int) ENGLISH_VOWELS.matcher(spoken).results().count();
        return Math.max(1, count);
    }

    private static int spanishSyllables(String word) {
        if (!word.chars().allMatch(Character::isLetter)) {
            return 1;
        }
        var spoken = Normalizer.normalize(word, Normalizer.Form.NFC)
                .replaceAll("(?<=[qg])u(?=[eiéí])", "")
                .replace("h", "");
        return Math.max(1, (int) SPANISH_NUCLEUS.matcher(spoken).results().count());
    }

    /**
     * The Flesch-Kincaid grade: school years in the United States; below 1 for the easiest texts.
     * Kincaid and others 1975, Navy report 8-75.
     */
    public double fleschKincaidGrade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /**
     * The Fernández-Huerta ease of a Spanish text: higher is easier, 80 to 90 reads as sixth grade. Words and syllables
     * are counted per word and per sentence, not per hundred. Fernández Huerta 1959, Consigna 214:29, as corrected by
     * Law 2011.
     */
    public double fernandezHuertaEase() {
        return 206.84 - 60.0 * syllables / words - 1.02 * words / sentences;
    }
}
