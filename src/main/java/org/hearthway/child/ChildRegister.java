package org.hearthway.child;

import java.util.List;
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
