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
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;

/** The stored form of lines and drafts: JSON with a format number, so that old rows stay readable. */
final class ProgramJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int FIRST_FORMAT = 1;
    private static final int FORMAT = 2;
    private static final String TO_FAMILY = "toFamily";

    private ProgramJson() {}

    /** What a version holds beside what the database asks after. */
    record Body(List<ProgramLine> lines, String toFamily) {}

    static String body(List<ProgramLine> lines, String toFamily) {
        return write(root(lines).put(TO_FAMILY, toFamily));
    }

    static Body body(String text) {
        var root = read(text);
        return new Body(lines(root), toFamily(root));
    }

    private static String toFamily(JsonNode root) {
        return root.path(TO_FAMILY).asText("");
    }

    static String draft(Draft draft) {
        return write(root(draft.lines())
                .put("effective", draft.effective().toString())
                .put("reason", draft.reason())
                .put(TO_FAMILY, draft.toFamily()));
    }

    static Draft draft(String text) {
        var root = read(text);
        return new Draft(
                LocalDate.parse(root.required("effective").asText()),
                lines(root),
                root.required("reason").asText(),
                toFamily(root));
    }

    private static ObjectNode root(List<ProgramLine> lines) {
        var root = JSON.createObjectNode().put("format", FORMAT);
        var array = root.putArray("lines");
        for (var line : lines) {
            var node = array.addObject().put("exercise", line.exercise());
            PrescriptionJson.write(node, line.prescription());
            var days = node.putArray("days");
            line.days().forEach(day -> days.add(day.name()));
            node.put("from", line.from().toString());
            line.until().ifPresent(until -> node.put("until", until.toString()));
            node.put("note", line.note());
            node.put("priority", line.priority().name());
            node.put("beyond", line.beyond());
            var exceptions = node.putArray("exceptions");
            for (var leave : line.exceptions()) {
                exceptions
                        .addObject()
                        .put("tag", leave.tag())
                        .put("begins", leave.begins().toString())
                        .put("until", leave.until().toString())
                        .put("reason", leave.reason());
            }
        }
        return root;
    }

    private static List<ProgramLine> lines(JsonNode root) {
        var lines = new ArrayList<ProgramLine>();
        for (var node : root.required("lines")) {
            lines.add(root.required("format").asInt() == FIRST_FORMAT ? firstLine(node) : line(node));
        }
        return lines;
    }

    /** A line of the first format: on fixed days, against nothing but the body. */
    private static ProgramLine firstLine(JsonNode node) {
        return ProgramLine.of(
                node.required("exercise").asText(),
                PrescriptionJson.dose(node.required("dose")),
                Side.valueOf(node.required("side").asText()),
                days(node.required("days")),
                LocalDate.parse(node.required("from").asText()),
                until(node),
                node.required("note").asText());
    }

    private static ProgramLine line(JsonNode node) {
        var exceptions = new ArrayList<Excepted>();
        for (var leave : node.required("exceptions")) {
            exceptions.add(new Excepted(
                    leave.required("tag").asText(),
                    LocalDate.parse(leave.required("begins").asText()),
                    LocalDate.parse(leave.required("until").asText()),
                    leave.required("reason").asText()));
        }
        return new ProgramLine(
                node.required("exercise").asText(),
                PrescriptionJson.read(node),
                days(node.required("days")),
                LocalDate.parse(node.required("from").asText()),
                until(node),
                node.required("note").asText(),
                Priority.valueOf(node.required("priority").asText()),
                node.required("beyond").asText(),
                exceptions);
    }

    private static Optional<LocalDate> until(JsonNode node) {
        return Optional.ofNullable(node.get("until")).map(until -> LocalDate.parse(until.asText()));
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
        var format = root.required("format").asInt();
        if (format != FIRST_FORMAT && format != FORMAT) {
            throw new IllegalStateException("a stored program has an unknown format");
        }
        return root;
    }
}
