package org.hearthway.program;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.ProgramLine;

/** The versions of a child's home program. A version is written once and stays. */
public interface Programs {

    /**
     * One version.
     *
     * @param number 1, 2, 3 …
     * @param effective first day the family does it
     * @param lines in the order of the day
     * @param author who saved it
     * @param at when
     * @param reason why, for the team
     * @param toFamily a word to the family that comes with it, as it was typed; may be empty
     */
    record Version(
            int number,
            LocalDate effective,
            List<ProgramLine> lines,
            AccountId author,
            Instant at,
            String reason,
            String toFamily) {
        public Version {
            lines = List.copyOf(lines);
        }
    }

    /** What a therapist wants to save. */
    record Draft(LocalDate effective, List<ProgramLine> lines, String reason, String toFamily) {
        public Draft {
            lines = List.copyOf(lines);
        }

        /** With no word to the family beside what is different. */
        public Draft(LocalDate effective, List<ProgramLine> lines, String reason) {
            this(effective, lines, reason, "");
        }
    }

    /**
     * A caution about a line: an exercise's tag meets a rule of care that holds on a day of the line.
     *
     * @param line counted from 0
     * @param care the rule and its days
     * @param leave leave to do it all the same, when the line has leave on all days that the rule forbids
     */
    record Caution(int line, Plan.Care care, Optional<Excepted> leave) {

        /** Whether the exercise must not be done: the rule forbids, and nobody gave leave. */
        public boolean isLocked() {
            return care.rule().forbids() && leave.isEmpty();
        }
    }

    /** The newest version; empty when there is none yet. */
    Optional<Version> latest(Viewer viewer, ChildId child);

    /** The version before the newest; empty when there is none. What changed for the family is the difference. */
    Optional<Version> former(Viewer viewer, ChildId child);

    /** All versions, newest first. */
    List<Version> history(Viewer viewer, ChildId child);

    /** Which lines of a draft meet a rule of care of the child's path. */
    List<Caution> cautions(Viewer viewer, ChildId child, Draft draft);

    /**
     * Saves a new version.
     *
     * @param seen number of the version the person started from, 0 for none
     * @throws org.hearthway.base.Invalid naming line, field, bound; also when a rule of care forbids an exercise and there is
     *     no leave, or when the draft gives leave that the newest version has not and the viewer may not give it
     * @throws org.hearthway.base.Overtaken when there is a newer version than {@code seen}; nothing is lost, the
     *     caller keeps its draft and reads {@link #latest}
     */
    Version save(Viewer viewer, ChildId child, Draft draft, int seen);

    /** Keeps what is being typed, so that a lost connection loses nothing; one draft a person and child. */
    void keepDraft(Viewer.Person viewer, ChildId child, Draft draft, int seen);

    /** A kept draft and the version it started from. */
    record KeptDraft(Draft draft, int seen, Instant at) {}

    /** The viewer's kept draft, if any. */
    Optional<KeptDraft> keptDraft(Viewer.Person viewer, ChildId child);

    /** Lets the kept draft go. */
    void dropDraft(Viewer.Person viewer, ChildId child);
}
