package org.hearthway.choosing.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.choosing.Answer;

/** The stored form of facts: JSON with a format number, so that old rows stay readable. */
final class FactsJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int FORMAT = 1;

    private FactsJson() {}

    static String written(Map<String, Answer> answers) {
        var root = JSON.createObjectNode().put("format", FORMAT);
        var facts = root.putObject("facts");
        new TreeMap<>(answers).forEach((fact, answer) -> {
            var node = facts.putObject(fact);
            var choices = node.putArray("choices");
            answer.data().choices().stream().sorted().forEach(choices::add);
            node.put("note", answer.data().note());
            node.put("by", answer.by().toString());
            node.put("at", answer.at().toString());
        });
        return root.toString();
    }

    static Map<String, Answer> read(String text) {
        var answers = new TreeMap<String, Answer>();
        root(text).required("facts").properties().forEach(entry -> {
            var node = entry.getValue();
            answers.put(
                    entry.getKey(),
                    new Answer(
                            new Answer.Data(
                                    choices(node.required("choices")),
                                    node.required("note").asText()),
                            new AccountId(UUID.fromString(node.required("by").asText())),
                            Instant.parse(node.required("at").asText())));
        });
        return answers;
    }

    private static JsonNode root(String text) {
        try {
            var root = JSON.readTree(text);
            if (root.required("format").asInt() != FORMAT) {
                throw new IllegalStateException("facts in a format that is not known");
            }
            return root;
        } catch (JsonProcessingException broken) {
            // what was typed must not reach a log
            throw new IllegalStateException("stored facts cannot be read");
        }
    }

    private static Set<String> choices(JsonNode array) {
        var choices = new HashSet<String>();
        array.forEach(choice -> choices.add(choice.asText()));
        return choices;
    }
}
