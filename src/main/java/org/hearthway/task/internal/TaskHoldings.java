package org.hearthway.task.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of the tasks about a child. */
@Component
class TaskHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Rows.of("task", "task", "child", "id"));
    }
}
