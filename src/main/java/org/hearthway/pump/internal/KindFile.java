package org.hearthway.pump.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.pump.PumpKinds;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;
import org.springframework.stereotype.Component;

/** The general kinds of pumps in {@code content/pump/kinds.yaml}. Families do not read them. */
@Component
class KindFile implements ContentKind, PumpKinds {

    private final Map<String, PumpKind> kinds = new LinkedHashMap<>();

    @Override
    public String place() {
        return "pump/kinds.yaml";
    }

    @Override
    public void read(Entry file) {
        for (var block : file.list("kinds")) {
            var id = block.text("id");
            try {
                var kind = new PumpKind(
                        id,
                        block.bilingual("name"),
                        model(block),
                        VolumePerLength.millilitresPerCentimetre(block.text("per-cm")));
                if (kinds.putIfAbsent(id, kind) != null) {
                    block.wrong("id", "a kind \"" + id + "\" stands already", "an identifier of its own");
                }
            } catch (Invalid invalid) {
                var problem = invalid.problems().get(0);
                block.wrong("id", id + ": " + problem.field() + " is out of bounds", "within " + problem.args());
            } catch (NumberFormatException noNumber) {
                block.wrong("id", id + ": a figure is no number", "decimals in quotation marks");
            }
            block.done();
        }
        file.provenance();
        if (kinds.isEmpty()) {
            file.wrong("kinds", "no kind of pump", "one at least");
        }
    }

    private static PumpModel model(Entry block) {
        var reservoir = Volume.millilitres(block.text("reservoir"));
        var alarm = Volume.millilitres(block.text("alarm"));
        var tubing = Volume.millilitres(block.text("tubing"));
        var life = block.period("life");
        if (block.has("flow")) {
            var flow = FlowRate.millilitresPerDay(block.text("flow"));
            return PumpModel.fixedRate(reservoir, alarm, tubing, flow, life);
        }
        var range = new FlowRange(
                FlowRate.millilitresPerDay(block.text("least")), FlowRate.millilitresPerDay(block.text("most")));
        return PumpModel.programmable(reservoir, alarm, tubing, range, life);
    }

    @Override
    public List<PumpKind> all() {
        return List.copyOf(kinds.values());
    }
}
