package org.hearthway.program.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.UsualDose.Amount;
import org.hearthway.program.engine.UsualDose.Outside;

/**
 * A dose outside what is usual for an exercise at a child's age is nothing wrong; it asks for a reason once, when it is
 * prescribed. A number that goes on as it was is not asked about again.
 */
public final class UsualRules {

    private UsualRules() {}

    /** What of a line lies outside the usual. No hold at all is not called a short one. */
    public static List<Outside> outside(ProgramLine line, UsualDose usual) {
        return usual.outside(line.dose(), line.prescription().rhythm().days()).stream()
                .filter(one -> one.amount() != Amount.HOLD_SECONDS || one.is() > 0)
                .toList();
    }

    /**
     * Lines that lack the reason, which stands in {@link ProgramLine#beyond}.
     *
     * @param lines as they shall be
     * @param before as they are until now
     * @param usual what is usual at the child's age, by exercise; one that is not in it asks for nothing
     */
    public static List<Problem> check(List<ProgramLine> lines, List<ProgramLine> before, Map<String, UsualDose> usual) {
        var problems = new ArrayList<Problem>();
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            var asks = Optional.ofNullable(usual.get(line.exercise()))
                    .filter(range -> asks(line, before, range))
                    .isPresent();
            if (asks && line.beyond().strip().length() < ProgramRules.BECAUSE.min()) {
                problems.add(Problem.at(
                        ProgramRules.field(i, "beyond"),
                        "program.problem.beyond",
                        i + 1,
                        ProgramRules.BECAUSE.min(),
                        ProgramRules.BECAUSE.max()));
            }
        }
        return List.copyOf(problems);
    }

    /** Whether a reason is asked for: something lies outside the usual that did not lie there just so before. */
    public static boolean asks(ProgramLine line, List<ProgramLine> before, UsualDose usual) {
        var known = before.stream()
                .filter(was -> was.exercise().equals(line.exercise()))
                .flatMap(was -> outside(was, usual).stream())
                .toList();
        return !known.containsAll(outside(line, usual));
    }
}
