package org.hearthway.pump;

import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.VolumePerLength;

/** General kinds of pumps, whose figures a person begins from and then overwrites from the label. */
public interface PumpKinds {

    /**
     * A kind.
     *
     * @param bore of the catheter that is usual with it
     */
    record PumpKind(String id, Bilingual name, PumpModel model, VolumePerLength bore) {}

    /** All of them, in the order of the clinic's file. */
    List<PumpKind> all();
}
