package org.hearthway.program.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;

/** The stored form of lines and drafts: JSON with a format number, so that old rows stay readable. */
final class ProgramJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int FORMAT = 1;

    private ProgramJson() {}

    static String lines(List<ProgramLine> lines) {
        return write(root(lines));
    }

    static List<ProgramLine> lines(String text) {
        return lines(read(text));
    }

    static String draft(Draft draft) {
        return write(root(draft.lines())
                .put("effective", draft.effective().toString())
                .put("reason", draft.reason()));
    }

    static Draft draft(String text) {
        var root = read(text);
        return new Draft(
                LocalDate.parse(root.required("effective").asText()),
                lines(root),
                root.required("reason").asText());
    }

    private static ObjectNode root(List<ProgramLine> lines) {
        var root = JSON.createObjectNode().put("format", FORMAT);
        var array = root.putArray("lines");
        for (var line : lines) {
            var node = array.addObject().put("exercise", line.exercise());
            var dose = line.dose();
            node.putObject("dose")
                    .put("sets", dose.sets())
                    .put("repetitions", dose.repetitions())
                    .put("holdSeconds", dose.holdSeconds())
                    .put("minutes", dose.minutes())
                    .put("timesADay", dose.timesADay());
            node.put("side", line.side().name());
            var days = node.putArray("days");
            line.days().forEach(day -> days.add(day.name()));
            node.put("from", line.from().toString());
            line.until().ifPresent(until -> node.put("until", until.toString()));
            node.put("note", line.note());
        }
        return root;
    }

    private static List<ProgramLine> lines(JsonNode root) {
        var lines = new ArrayList<ProgramLine>();
        for (var node : root.required("lines")) {
            var dose = node.required("dose");
            lines.add(new ProgramLine(
                    node.required("exercise").asText(),
                    new Dose(
                            dose.required("sets").asInt(),
                            dose.required("repetitions").asInt(),
                            dose.required("holdSeconds").asInt(),
                            dose.required("minutes").asInt(),
                            dose.required("timesADay").asInt()),
                    Side.valueOf(node.required("side").asText()),
                    days(node.required("days")),
                    LocalDate.parse(node.required("from").asText()),
                    Optional.ofNullable(node.get("until")).map(until -> LocalDate.parse(until.asText())),
                    node.required("note").asText()));
        }
        return lines;
    }

    private static Set<DayOfWeek> days(JsonNode array) {
        var days = EnumSet.noneOf(DayOfWeek.class);
        array.forEach(day -> days.add(DayOfWeek.valueOf(day.asText())));
        return days;
    }

    private static String write(ObjectNode root) {
        try {
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a program cannot be written", e);
        }
    }

    private static JsonNode read(String text) {
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            // the parser's message would quote the text
            throw new IllegalStateException("a stored program cannot be read");
        }
        if (root.required("format").asInt() != FORMAT) {
            throw new IllegalStateException("a stored program has an unknown format");
        }
        return root;
    }
}
