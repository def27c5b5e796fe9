package org.hearthway.testing;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Names;

/** Children for tests: a fresh one each time. */
public final class Children {

    private Children() {}

    /** Data that the register takes. */
    public static ChildData data() {
        return ChildData.plain(Names.plain("Wren", "Halloway"), LocalDate.of(2019, 5, 4), Optional.of(3), 2);
    }

    /** Enters a fresh child. */
    public static ChildId enter(ChildRegister register) {
        return register.enter(People.with(Role.ADMINISTRATOR), data());
    }

    /** A fresh caregiver of the child. */
    public static Viewer.Person caregiver(Households households, ChildId child, Households.Reach reach) {
        var parent = People.with(Role.CAREGIVER);
        households.link(People.with(Role.ADMINISTRATOR), child, parent.account(), reach);
        return parent;
    }
}
