package org.hearthway.choosing;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/**
 * The talk that chooses a child's path. It tells what speaks for and against each path, what is missing and what to
 * talk about; it counts and ranks nothing and never decides. For clinical staff; a family sees nothing of it but the
 * page that staff hand over.
 */
public interface Choosing {

    /** What stands as the source of what nobody has published. */
    String NO_SOURCE = "common practice, no source";

    /** Most characters of a note to a fact. */
    int NOTE_MAX = 160;

    /** Fewest characters of who was there. */
    int PRESENT_MIN = 2;

    /** Most characters of who was there. */
    int PRESENT_MAX = 300;

    /** Fewest characters of a reason. */
    int REASON_MIN = 3;

    /** Most characters of a reason. */
    int REASON_MAX = 500;

    /** A path that can be begun. */
    record Way(String id, Bilingual name) {}

    /** The facts that are asked for, in their groups. */
    List<Fact.Group> facts();

    /** The paths that a decision can choose: those that the clinic can begin, in the order in which they are told. */
    List<Way> ways();

    /** What is on the table for a child today. */
    Talk talk(Viewer viewer, ChildId child);

    /**
     * The same if these facts were entered; nothing is saved.
     *
     * @param choices the choices that hold, by fact; what does not stand there is not known
     */
    Talk talkIf(Viewer viewer, ChildId child, Map<String, Set<String>> choices);

    /**
     * Enters facts. What does not stand among them stays as it was; a fact becomes unknown again by entering
     * {@link Answer.Data#NONE} for it. Nothing changed is nothing entered.
     *
     * @param seen version of the facts that the person saw
     * @throws org.hearthway.base.Invalid naming fact, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else entered facts in between
     */
    void enter(Viewer viewer, ChildId child, Map<String, Answer.Data> facts, long seen);

    /** Every version of the facts, newest first: who entered what and when. */
    List<FactsEntry> entries(Viewer viewer, ChildId child);

    /** Everything that was decided, newest first. */
    List<Decision> decisions(Viewer viewer, ChildId child);

    /**
     * Writes down what was decided and, when it is a path that the child is not on already, begins that path on that
     * day. Both happen or neither.
     *
     * @param seen number of the newest decision that the person saw, 0 for none
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else wrote one down in between
     */
    void decide(Viewer viewer, ChildId child, Decision.Data data, long seen);

    /** What the family takes home; asking for it is written to the trail as handed over. */
    Handout handout(Viewer viewer, ChildId child);
}
