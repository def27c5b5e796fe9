package org.hearthway.stimulator.internal;

import static org.hearthway.base.Holding.GoesOn.THE_NEWER;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Table;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child’s stimulator: of two chains of readings only the newer may go on. */
@Component
class StimulatorHoldings implements Holdings {

    private static final String CHILD = "child";

    @Override
    public List<Holding> all() {
        return List.of(
                new Chain(
                        "stimulator-reading",
                        List.of(
                                new Table("stimulator_reading", CHILD),
                                new Table("stimulator_impedance", CHILD),
                                new Table("stimulator_setting", CHILD),
                                new Table("stimulator_other", CHILD),
                                new Table("stimulator_check", CHILD)),
                        List.of(),
                        THE_NEWER,
                        "taken_at"),
                Chain.of("stimulator_generator", CHILD, THE_NEWER, "entered_at", "serial"));
    }
}
