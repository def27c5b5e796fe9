package org.hearthway.program;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.figure.Figure;
import org.hearthway.program.engine.Dose;

/**
 * An exercise of the library.
 *
 * @param id identifier, the file's name
 * @param name in family words
 * @param purpose what it is good for, in family words
 * @param steps how it is done, in family words, in order
 * @param stop when to stop, in family words
 * @param kind what sort of work it is
 * @param muscles muscle groups, for the therapist's search
 * @param tags precaution tags it carries, such as {@code passive-trunk-twist}
 * @param sided whether it is done with one side at a time
 * @param helper whether a grown-up's hands are needed
 * @param usual the usual dose that adding it fills in
 * @param figure its pictures
 * @param easier identifier of an easier variant, if any
 * @param harder identifier of a harder variant, if any
 * @param provenance source, version, reviews
 */
public record Exercise(
        String id,
        Bilingual name,
        Bilingual purpose,
        List<Bilingual> steps,
        Bilingual stop,
        Kind kind,
        Bilingual muscles,
        Set<String> tags,
        boolean sided,
        boolean helper,
        Dose usual,
        Figure figure,
        Optional<String> easier,
        Optional<String> harder,
        Provenance provenance) {

    public Exercise {
        steps = List.copyOf(steps);
        tags = Set.copyOf(tags);
    }

    /** What sort of work an exercise is. */
    public enum Kind {
        STRETCH,
        STRENGTH,
        POSITION,
        WALK,
        BALANCE,
        ARM
    }

    /** What a clinic accepts when it shows this exercise to families. */
    public SignOff.Item item() {
        return new SignOff.Item("exercises", id, provenance.version());
    }
}
