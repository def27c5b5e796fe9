package org.hearthway.child;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.child.engine.Gestation;

/**
 * What a person enters about a child.
 *
 * @param names what the child is called
 * @param birthDate not in the future, at most 25 years back
 * @param gestation how long the child was carried, if recorded
 * @param gmfcs gross motor function level 1 to 5, if recorded
 * @param skinTone which of the four figure tones, 1 to 4
 * @param allergies what is known of them
 * @param interpreter language in which the child needs an interpreter, at most 60 characters; empty for none
 */
public record ChildData(
        Names names,
        LocalDate birthDate,
        Optional<Gestation> gestation,
        Optional<Integer> gmfcs,
        int skinTone,
        Allergies allergies,
        String interpreter) {

    /** The least that is entered. */
    public static ChildData plain(Names names, LocalDate birthDate, Optional<Integer> gmfcs, int skinTone) {
        return new ChildData(names, birthDate, Optional.empty(), gmfcs, skinTone, Allergies.NOT_ASKED, "");
    }
}
