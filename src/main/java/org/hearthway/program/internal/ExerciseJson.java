package org.hearthway.program.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hearthway.base.Bilingual;
import org.hearthway.content.Provenance;
import org.hearthway.figure.Figures;
import org.hearthway.program.Exercise;
import org.hearthway.program.Exercise.Help;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.Exercise.Named;
import org.hearthway.program.Exercise.Traits;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.week.Ask;

/** The stored form of what an exercise said: what a family and a therapist need to go on with it, and no links. */
final class ExerciseJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int FORMAT = 1;
    private static final Span ANY_AGE = new Span(0, 99);

    private ExerciseJson() {}

    static String write(Exercise exercise) {
        var root = JSON.createObjectNode().put("format", FORMAT).put("id", exercise.id());
        both(root, "name", exercise.name());
        both(root, "purpose", exercise.purpose());
        var steps = root.putArray("steps");
        exercise.steps().forEach(step -> both(steps.addObject(), step));
        both(root, "stop", exercise.stop());
        root.put("kind", exercise.kind().name());
        var traits = exercise.traits();
        named(root.putArray("muscleGroups"), traits.muscleGroups());
        named(root.putArray("things"), traits.things());
        root.put("help", traits.help().name());
        root.put("phase", traits.phase().name());
        var levels = root.putArray("levels");
        traits.levels().stream().sorted().forEach(levels::add);
        var tags = root.putArray("tags");
        exercise.tags().stream().sorted().forEach(tags::add);
        root.put("sided", exercise.sided());
        PrescriptionJson.dose(root.putObject("dose"), exercise.usual());
        root.put("figure", exercise.figure().id());
        root.put("source", exercise.provenance().source());
        root.put("version", exercise.provenance().version());
        try {
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an exercise cannot be written", e);
        }
    }

    static Exercise read(String text, Figures figures) {
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kept exercise cannot be read", e);
        }
        if (root.required("format").asInt() != FORMAT) {
            throw new IllegalStateException("a kept exercise has an unknown format");
        }
        var dose = PrescriptionJson.dose(root.required("dose"));
        var source = root.required("source").asText();
        return new Exercise(
                root.required("id").asText(),
                both(root.required("name")),
                both(root.required("purpose")),
                all(root.required("steps"), ExerciseJson::both),
                both(root.required("stop")),
                Kind.valueOf(root.required("kind").asText()),
                new Traits(
                        all(root.required("muscleGroups"), ExerciseJson::named),
                        Set.of(),
                        List.of(),
                        all(root.required("things"), ExerciseJson::named),
                        Help.valueOf(root.required("help").asText()),
                        new HashSet<>(all(root.required("levels"), JsonNode::asInt)),
                        Ask.Phase.valueOf(root.required("phase").asText()),
                        false),
                new HashSet<>(all(root.required("tags"), JsonNode::asText)),
                root.required("sided").asBoolean(),
                dose,
                List.of(new UsualDose(
                        ANY_AGE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        source)),
                figures.named(root.required("figure").asText()),
                Optional.empty(),
                Optional.empty(),
                new Provenance(source, root.required("version").asInt(), Optional.empty(), Optional.empty()));
    }

    private static void both(ObjectNode node, String key, Bilingual words) {
        both(node.putObject(key), words);
    }

    private static void both(ObjectNode node, Bilingual words) {
        node.put("en", words.en()).put("es", words.es());
    }

    private static Bilingual both(JsonNode node) {
        return new Bilingual(node.required("en").asText(), node.required("es").asText());
    }

    private static void named(ArrayNode array, List<Named> all) {
        for (var one : all) {
            var node = array.addObject().put("id", one.id());
            both(node, "name", one.name());
        }
    }

    private static Named named(JsonNode node) {
        return new Named(node.required("id").asText(), both(node.required("name")));
    }

    private static <T> List<T> all(JsonNode array, Function<JsonNode, T> one) {
        var all = new ArrayList<T>();
        array.forEach(node -> all.add(one.apply(node)));
        return all;
    }
}
