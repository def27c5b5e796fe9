package org.hearthway.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.program.engine.ProgramLine;

/**
 * Beginnings of a program that a therapist takes and makes the child's own. None of them is a recommendation: which
 * exercises and how much is for the therapist to say.
 */
public interface StarterSets {

    /**
     * A beginning.
     *
     * @param id the file's name
     * @param name for therapists
     * @param about for whom it may be a beginning, for therapists
     * @param levels GMFCS levels it is meant for
     * @param lines exercises with the library's usual dose; their first day is none, see {@link #from}
     */
    record StarterSet(String id, Bilingual name, Bilingual about, Set<Integer> levels, List<ProgramLine> lines) {
        public StarterSet {
            levels = Set.copyOf(levels);
            lines = List.copyOf(lines);
        }

        /** Its lines from a first day on. */
        public List<ProgramLine> from(LocalDate first) {
            return lines.stream().map(line -> line.between(first, line.until())).toList();
        }
    }

    /** All of them, in the order of their files. */
    List<StarterSet> all();
}
