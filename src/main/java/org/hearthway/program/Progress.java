package org.hearthway.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.trend.Quilt;
import org.hearthway.program.engine.trend.RunChart;
import org.hearthway.program.engine.trend.Trends;
import org.hearthway.program.engine.trend.Trends.Rater;

/** How a home program goes: what is read out of what a family said of it. Nothing here is kept; it is read anew. */
public interface Progress {

    /** How many weeks can be looked at, this one included. */
    List<Integer> SPANS = List.of(6, 12, 26);

    /**
     * How it goes, of one exercise or of all.
     *
     * @param weeks week by week from Monday, those without anything planned included
     * @param whole all of these weeks together
     * @param pain the highest of each day, by who rated
     * @param effort the highest of each day, by who rated
     * @param reasons why sessions were not done, the most frequent first
     */
    record Going(
            List<Trends.Week> weeks,
            Adherence whole,
            Map<Rater, RunChart> pain,
            Map<Rater, RunChart> effort,
            List<Trends.Given> reasons) {
        public Going {
            weeks = List.copyOf(weeks);
            pain = Map.copyOf(pain);
            effort = Map.copyOf(effort);
            reasons = List.copyOf(reasons);
        }
    }

    /** How it goes with one exercise. */
    record OfExercise(String exercise, Going going) {}

    /**
     * What the weeks up to today say.
     *
     * @param from the Monday on which they begin
     * @param until today
     * @param exercises those that were planned or done in these weeks, in the order of the program
     */
    record Weeks(LocalDate from, LocalDate until, Going all, List<OfExercise> exercises) {
        public Weeks {
            exercises = List.copyOf(exercises);
        }
    }

    /**
     * More is proposed by a line's own rule; a therapist decides.
     *
     * @param now the line as it is in the newest version
     * @param then the same with what is proposed, its rule spent
     * @param version the newest version
     * @param days that carry it, in order; at least one
     */
    record Proposed(ProgramLine now, ProgramLine then, int version, List<LocalDate> days) {
        public Proposed {
            days = List.copyOf(days);
        }
    }

    /** Where the rule for more of a line is met that the family does now, in the order of the program, an exercise once. */
    List<Proposed> proposed(Viewer viewer, ChildId child);

    /**
     * Puts a proposal into the viewer's draft of the program, over what stands there of the line; nothing is saved.
     *
     * @param seen the proposal that the person saw
     * @throws org.hearthway.base.Overtaken when it no longer stands, or the draft no longer has the line as it was
     */
    void takeUp(Viewer.Person viewer, ChildId child, Proposed seen);

    /**
     * The last weeks. What is planned for today counts once something was said of it.
     *
     * @param weeks how many, 1 to 52, this one included
     */
    Weeks weeks(Viewer viewer, ChildId child, int weeks);

    /** What was planned and said of each exercise, from the first day to the last, both included and neither after today. */
    List<Trends.Log> logs(Viewer viewer, ChildId child, LocalDate from, LocalDate until);

    /** The quilt of a child: a patch for each week in which anything was practised, the first week first. */
    List<Quilt.Patch> quilt(Viewer viewer, ChildId child);
}
