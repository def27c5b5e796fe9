package org.hearthway.child;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person enters about a child.
 *
 * @param usedName the name the child goes by, 1 to 80 characters
 * @param familyName family name or names, 1 to 120 characters
 * @param birthDate not in the future, at most 25 years back
 * @param gmfcs gross motor function level 1 to 5, if recorded
 * @param skinTone which of the four figure tones, 1 to 4
 */
public record ChildData(
        String usedName, String familyName, LocalDate birthDate, Optional<Integer> gmfcs, int skinTone) {}
