package org.hearthway.program.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.Rhythm;

/** The stored form of a prescription, in the fields of its line. */
final class PrescriptionJson {

    private PrescriptionJson() {}

    static void write(ObjectNode node, Prescription prescription) {
        dose(node.putObject("dose"), prescription.dose());
        prescription.restSeconds().ifPresent(rest -> node.put("restSeconds", rest));
        node.put("side", prescription.side().name());
        load(node.putObject("load"), prescription.load());
        node.putObject("rhythm")
                .put("days", prescription.rhythm().days())
                .put("spread", prescription.rhythm().spread().name());
        prescription.effort().ifPresent(effort -> node.put("effort", effort));
        prescription.progression().ifPresent(rule -> {
            var next = node.putObject("progression")
                    .put("days", rule.days())
                    .put("effortUnder", rule.effortUnder())
                    .put("painUnder", rule.painUnder());
            dose(next.putObject("dose"), rule.next());
            load(next.putObject("load"), rule.nextLoad());
        });
    }

    static Prescription read(JsonNode node) {
        var rhythm = node.required("rhythm");
        return new Prescription(
                dose(node.required("dose")),
                integer(node, "restSeconds"),
                Side.valueOf(node.required("side").asText()),
                load(node.required("load")),
                new Rhythm(
                        rhythm.required("days").asInt(),
                        Rhythm.Spread.valueOf(rhythm.required("spread").asText())),
                integer(node, "effort"),
                Optional.ofNullable(node.get("progression")).map(PrescriptionJson::progression));
    }

    private static Progression progression(JsonNode rule) {
        return new Progression(
                rule.required("days").asInt(),
                rule.required("effortUnder").asInt(),
                rule.required("painUnder").asInt(),
                dose(rule.required("dose")),
                load(rule.required("load")));
    }

    private static Optional<Integer> integer(JsonNode node, String key) {
        return Optional.ofNullable(node.get(key)).map(JsonNode::asInt);
    }

    static void dose(ObjectNode node, Dose dose) {
        node.put("sets", dose.sets())
                .put("repetitions", dose.repetitions())
                .put("holdSeconds", dose.holdSeconds())
                .put("minutes", dose.minutes())
                .put("timesADay", dose.timesADay());
    }

    static Dose dose(JsonNode dose) {
        return new Dose(
                dose.required("sets").asInt(),
                dose.required("repetitions").asInt(),
                dose.required("holdSeconds").asInt(),
                dose.required("minutes").asInt(),
                dose.required("timesADay").asInt());
    }

    private static void load(ObjectNode node, Load load) {
        if (load instanceof Load.Weight weight) {
            node.put("grams", weight.grams());
        } else if (load instanceof Load.Band band) {
            node.put("band", band.step());
        }
    }

    private static Load load(JsonNode node) {
        if (node.has("grams")) {
            return new Load.Weight(node.get("grams").asInt());
        }
        return node.has("band") ? new Load.Band(node.get("band").asInt()) : new Load.Body();
    }
}
