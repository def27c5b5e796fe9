package org.hearthway.task;

import org.hearthway.base.Language;
import org.hearthway.words.ReadingLevel;

/** How hard the words of a task may be to read for a family: the same bound for a ready text and for what is typed. */
public final class PlainWords {

    /** Sixth grade, the clinic's own bound for family words. */
    public static final double HARDEST_GRADE = 6.9;

    /** "Fairly easy" on the Fernández-Huerta scale begins here. */
    public static final double LEAST_EASE = 70;

    private PlainWords() {}

    /** Whether a text reads harder than the bound of its language; one without a word does not. */
    public static boolean areHard(Language language, String text) {
        if (text.chars().noneMatch(Character::isLetterOrDigit)) {
            return false;
        }
        return switch (language) {
            case EN -> ReadingLevel.english(text).fleschKincaidGrade() > HARDEST_GRADE;
            case ES -> ReadingLevel.spanish(text).fernandezHuertaEase() < LEAST_EASE;
        };
    }
}
