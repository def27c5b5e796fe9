package org.hearthway.child.internal;

import static org.hearthway.base.Holding.GoesOn.OF_THE_ONE_THAT_STAYS;
import static org.hearthway.base.Holding.GoesOn.SILENTLY;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Kept;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holding.Table;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child's circle, devices and status, and of what the family was told. */
@Component
class ChildHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(
                Chain.of("caregiver_reach", "child", OF_THE_ONE_THAT_STAYS, "said_at", "account"),
                Chain.of("caregiver_home", "child", OF_THE_ONE_THAT_STAYS, "said_at", "account"),
                Chain.of("child_helper", "child", OF_THE_ONE_THAT_STAYS, "said_at", "account"),
                Chain.of("child_standing", "child", SILENTLY, "said_at"),
                Rows.of("child-device", "child_device", "child", "id"),
                Rows.of("told-change", "told_change", "child", "number"),
                new Kept("safeguarding-flag", new Table("safeguarding_flag", "child"), "number", "raised"));
    }
}
