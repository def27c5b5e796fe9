package org.hearthway.program.internal;

import static org.hearthway.base.Holding.GoesOn.OF_THE_ONE_THAT_STAYS;
import static org.hearthway.base.Holding.GoesOn.SILENTLY;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child’s home program and of what was done. */
@Component
class ProgramHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(
                Chain.of("program_version", "child", OF_THE_ONE_THAT_STAYS, "saved_at"),
                Chain.of("program_draft", "child", SILENTLY, "kept_at", "author"),
                Rows.of("program-pause", "program_pause", "child", "number"),
                Rows.of("program-resumed", "program_resumed", "child", "pause"),
                Rows.of("session-entry", "session_entry", "child", "turn"),
                Chain.of("family_times", "child", OF_THE_ONE_THAT_STAYS, "saved_at"),
                Rows.of("family-away", "family_away", "child", "away_key"),
                Chain.of("week_layout", "child", SILENTLY, "saved_at"),
                Rows.of("week-move", "week_move", "child", "move_key"));
    }
}
