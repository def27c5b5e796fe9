package org.hearthway.equipment;

import java.util.List;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Splints and equipment of each child. */
public interface Equipment {

    /** The kinds of things to wear and to use, by English name. */
    List<Kind> kinds();

    /** All of a child, what is in use first; for anyone who may see the family's pages of it. */
    List<Item> of(Viewer viewer, ChildId child);

    /**
     * Enters one.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    UUID enter(Viewer viewer, ChildId child, Item.Data data);

    /**
     * Enters one anew, with a look more, given back, or a slip put right.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     */
    void change(Viewer viewer, ChildId child, UUID item, Item.Data data, long seen);
}
