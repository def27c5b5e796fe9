package org.hearthway.program;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.figure.Figure;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.week.Ask;

/**
 * An exercise of the library.
 *
 * @param id identifier, the file's name
 * @param name in family words
 * @param purpose what it is good for, in family words
 * @param steps how it is done, in family words, in order
 * @param stop when to stop, in family words
 * @param kind what sort of work it is
 * @param traits what it asks for and whom it is for
 * @param tags precaution tags it carries, such as {@code passive-trunk-twist}
 * @param sided whether it is done with one side at a time
 * @param usual the usual dose that adding it fills in
 * @param ranges how much is usual, by age, the youngest first and without a gap
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
        Traits traits,
        Set<String> tags,
        boolean sided,
        Dose usual,
        List<UsualDose> ranges,
        Figure figure,
        Optional<String> easier,
        Optional<String> harder,
        Provenance provenance) {

    public Exercise {
        steps = List.copyOf(steps);
        tags = Set.copyOf(tags);
        ranges = List.copyOf(ranges);
    }

    /** What sort of work an exercise is. */
    public enum Kind {
        STRETCH,
        STRENGTH,
        POSITION,
        WALK,
        BALANCE,
        TRANSFER,
        ARM,
        TRUNK,
        BREATH
    }

    /** A joint that moves or is held. */
    public enum Joint {
        HIP,
        KNEE,
        ANKLE,
        FOOT,
        TRUNK,
        NECK,
        SHOULDER,
        ELBOW,
        FOREARM,
        WRIST,
        FINGERS,
        THUMB,
        RIBS
    }

    /** A position of the body that the exercise has on its way. */
    public enum Position {
        BACK,
        SIDE,
        TUMMY,
        LONG_SITTING,
        FLOOR_SITTING,
        SITTING,
        KNEELING,
        HALF_KNEELING,
        ALL_FOURS,
        STANDING,
        WALKING
    }

    /** What a grown-up has to do with it. */
    public enum Help {
        /** Nothing: the child does it alone. */
        NONE,
        /** Stands by, ready to hold. */
        NEAR,
        /** Holds or moves the child. */
        HANDS,
        /** Two grown-ups do. */
        TWO
    }

    /**
     * Something with a name: a muscle group, or a thing at home.
     *
     * @param id as content files write it
     */
    public record Named(String id, Bilingual name) {}

    /**
     * What an exercise asks for and whom it is for.
     *
     * @param muscleGroups that work or are stretched, the most important first
     * @param joints that move or are held
     * @param positions that the child is in, in order
     * @param things that are needed at home; empty for none
     * @param help what a grown-up has to do
     * @param levels of gross motor function (GMFCS, 1 to 5) that it is usually for, at least one
     * @param phase its place within a session
     * @param play whether it is told as play for small children
     */
    public record Traits(
            List<Named> muscleGroups,
            Set<Joint> joints,
            List<Position> positions,
            List<Named> things,
            Help help,
            Set<Integer> levels,
            Ask.Phase phase,
            boolean play) {

        public Traits {
            muscleGroups = List.copyOf(muscleGroups);
            joints = Set.copyOf(joints);
            positions = List.copyOf(positions);
            things = List.copyOf(things);
            levels = Set.copyOf(levels);
        }
    }

    /** Its muscle groups in one line. */
    public Bilingual muscles() {
        var names = traits.muscleGroups().stream().map(Named::name).toList();
        return new Bilingual(
                names.stream().map(Bilingual::en).collect(Collectors.joining(", ")),
                names.stream().map(Bilingual::es).collect(Collectors.joining(", ")));
    }

    /** Whether a grown-up's hands are needed. */
    public boolean helper() {
        return traits.help() == Help.HANDS || traits.help() == Help.TWO;
    }

    /**
     * How much is usual at an age. Below the youngest stated age the youngest counts, and above the oldest the oldest:
     * the library leaves nobody without.
     *
     * @param years age in whole years
     */
    public UsualDose usualFor(int years) {
        return ranges.stream()
                .filter(range -> years <= range.ages().most())
                .findFirst()
                .orElseGet(() -> ranges.get(ranges.size() - 1));
    }

    /** The same exercise in other words. */
    public Exercise told(Bilingual otherName, Bilingual otherPurpose, List<Bilingual> otherSteps, Bilingual otherStop) {
        return new Exercise(
                id,
                otherName,
                otherPurpose,
                otherSteps,
                otherStop,
                kind,
                traits,
                tags,
                sided,
                usual,
                ranges,
                figure,
                easier,
                harder,
                provenance);
    }

    /** The same exercise with other traits. */
    public Exercise with(Traits other) {
        return new Exercise(
                id,
                name,
                purpose,
                steps,
                stop,
                kind,
                other,
                tags,
                sided,
                usual,
                ranges,
                figure,
                easier,
                harder,
                provenance);
    }

    /** What a clinic accepts when it shows this exercise to families. */
    public SignOff.Item item() {
        return new SignOff.Item("exercises", id, provenance.version());
    }
}
