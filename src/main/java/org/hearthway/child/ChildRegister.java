package org.hearthway.child;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The clinic's children. */
public interface ChildRegister {

    /** Every child, by family name; for staff. */
    List<Child> all(Viewer viewer);

    /** The children this person cares for, by birth date; empty for staff. */
    List<Child> mine(Viewer.Person viewer);

    /**
     * One child, for anyone who may see the family's pages of it.
     *
     * @throws org.hearthway.base.NotAvailable when there is none or it is not this viewer's
     */
    Child get(Viewer viewer, ChildId child);

    /** A name the child had, since when. */
    record Former(Names names, Instant since) {}

    /** Why two entries may be one child. */
    enum Likeness {
        /** Same birth date, and a given name and a surname that agree but for a slip of the keyboard. */
        NAME_AND_BIRTH_DATE,
        /** Same name, and a birth date with day and month exchanged, or one digit wrong. */
        NAME_AND_NEAR_BIRTH_DATE,
        /** Same birth date and the same surname, another given name: a twin, or a name that changed. */
        SURNAME_AND_BIRTH_DATE
    }

    /** A child already entered that may be the same as the one to be entered, and why. */
    record Alike(Child child, Set<Likeness> why) {

        public Alike {
            why = Set.copyOf(why);
        }
    }

    /** The names the child has and had, newest first; for the team. */
    List<Former> names(Viewer viewer, ChildId child);

    /** The children that may be the same as one about to be entered; for whoever enters children. */
    List<Alike> alike(Viewer viewer, ChildData data);

    /**
     * Enters a child.
     *
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    ChildId enter(Viewer viewer, ChildData data);

    /**
     * Corrects what was entered.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     */
    void change(Viewer viewer, ChildId child, ChildData data, long seen);
}
