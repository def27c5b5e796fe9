package org.hearthway.choosing.engine;

import java.util.List;
import org.hearthway.base.Bilingual;

/**
 * What the clinic knows of choosing one path.
 *
 * @param id identifier, the same as that of the path
 * @param place where it stands among the paths, always the same
 * @param name in trade terms
 * @param criteria in the order in which they are told
 * @param points to be talked about whatever the facts are
 * @param change what change is usual
 * @param family what a family reads of the path
 */
public record Guide(
        String id,
        int place,
        Bilingual name,
        List<Criterion> criteria,
        List<Point> points,
        Change change,
        ForFamily family) {

    public Guide {
        criteria = List.copyOf(criteria);
        points = List.copyOf(points);
    }

    /** Something to talk about in any case. */
    public record Point(Bilingual says, String source) {}

    /**
     * What change is usual, in words.
     *
     * @param shown when it may be told of a child; it is not told unless this is known to hold
     * @param says what is usual
     * @param beside what always stands beside it: for whom it is otherwise
     * @param otherwise what is told when it does not hold
     */
    public record Change(Condition shown, Told says, Told beside, Told otherwise, String source) {}

    /** The same in trade words and in family words. */
    public record Told(Bilingual says, Bilingual family) {}

    /**
     * What a family reads of a path.
     *
     * @param name in family words
     * @param what what it is, and what it asks of the family
     */
    public record ForFamily(Bilingual name, Bilingual what, Bilingual asks) {}

    /** What is said about a child: for it, against it, missing, to talk about; within each as the file has it. */
    public List<Line> read(Known known) {
        var lines = criteria.stream()
                .flatMap(criterion -> criterion.read(known).stream())
                .toList();
        return java.util.Arrays.stream(Mark.values())
                .flatMap(mark -> lines.stream().filter(line -> line.mark() == mark))
                .toList();
    }
}
