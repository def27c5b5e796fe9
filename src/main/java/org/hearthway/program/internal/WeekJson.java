package org.hearthway.program.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.FamilyTimes.Slot;
import org.hearthway.program.FamilyTimes.Times;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Placed;
import org.hearthway.program.engine.week.WeekPlan.Reason;
import org.hearthway.program.engine.week.WeekPlan.Way;

/** The stored form of a family's times and of laid out weeks: JSON with a format number, so that old rows stay readable. */
final class WeekJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int FORMAT = 1;

    private WeekJson() {}

    static String times(Times times) {
        var root = root();
        var slots = root.putArray("slots");
        times.slots().forEach(slot -> {
            var node = slots.addObject()
                    .put("day", slot.day().name())
                    .put("start", slot.start().toString())
                    .put("minutes", slot.minutes());
            texts(node.putArray("helpers"), slot.helpers());
        });
        var busy = root.putArray("busy");
        times.busy()
                .forEach(one -> busy.addObject()
                        .put("day", one.day().name())
                        .put("from", one.from().toString())
                        .put("until", one.until().toString())
                        .put("what", one.what()));
        times.most().ifPresent(most -> root.put("most", most));
        return root.toString();
    }

    static Times times(String text) {
        var root = read(text);
        return new Times(
                each(
                        root.required("slots"),
                        node -> new Slot(
                                day(node), time(node, "start"), whole(node, "minutes"), texts(node, "helpers"))),
                each(
                        root.required("busy"),
                        node -> new Busy(day(node), time(node, "from"), time(node, "until"), text(node, "what"))),
                root.has("most") ? Optional.of(whole(root, "most")) : Optional.empty());
    }

    static String layout(Layout layout) {
        var root = root().put("kind", layout.kind().name());
        var placed = root.putArray("placed");
        layout.placed()
                .forEach(one -> placed.addObject()
                        .put("exercise", one.exercise())
                        .put("day", one.day().name())
                        .put("start", one.start().toString()));
        texts(root.putArray("asked"), layout.asked().stream().sorted().toList());
        var slots = root.putArray("slots");
        layout.week().slots().forEach(slot -> write(slots.addObject(), slot));
        var most = root.putObject("most");
        layout.week().most().forEach((day, minutes) -> most.put(day.name(), minutes));
        var out = root.putArray("out");
        layout.out().forEach(one -> {
            var node = out.addObject()
                    .put("exercise", one.exercise())
                    .put("sessions", one.sessions())
                    .put("reason", one.reason().name());
            var ways = node.putArray("ways");
            one.ways().forEach(way -> write(ways.addObject(), way));
        });
        return root.toString();
    }

    private static void write(ObjectNode node, FamilyWeek.Slot slot) {
        node.put("day", slot.day().name()).put("start", slot.start().toString()).put("minutes", slot.minutes());
        texts(node.putArray("helpers"), slot.helpers().stream().sorted().toList());
    }

    private static void write(ObjectNode node, Way way) {
        if (way instanceof Way.Longer longer) {
            write(node.put("way", "longer").put("by", longer.minutes()), longer.slot());
        } else if (way instanceof Way.Shorter shorter) {
            write(node.put("way", "shorter").put("by", shorter.minutes()), shorter.slot());
        } else if (way instanceof Way.Help help) {
            write(node.put("way", "help"), help.slot());
        } else if (way instanceof Way.InsteadOf instead) {
            write(node.put("way", "instead").put("of", instead.exercise()), instead.slot());
        }
    }

    static Layout layout(String text) {
        var root = read(text);
        var most = new EnumMap<DayOfWeek, Integer>(DayOfWeek.class);
        root.required("most")
                .properties()
                .forEach(one ->
                        most.put(DayOfWeek.valueOf(one.getKey()), one.getValue().asInt()));
        return new Layout(
                Layout.Kind.valueOf(text(root, "kind")),
                each(
                        root.required("placed"),
                        node -> new Placed(text(node, "exercise"), day(node), time(node, "start"))),
                new HashSet<>(texts(root, "asked")),
                new FamilyWeek(each(root.required("slots"), WeekJson::slot), most),
                each(
                        root.required("out"),
                        node -> new Layout.Out(
                                text(node, "exercise"),
                                whole(node, "sessions"),
                                Reason.valueOf(text(node, "reason")),
                                each(node.required("ways"), WeekJson::way))));
    }

    private static FamilyWeek.Slot slot(JsonNode node) {
        return new FamilyWeek.Slot(
                day(node), time(node, "start"), whole(node, "minutes"), new HashSet<>(texts(node, "helpers")));
    }

    private static Way way(JsonNode node) {
        var kind = text(node, "way");
        return switch (kind) {
            case "longer" -> new Way.Longer(slot(node), whole(node, "by"));
            case "shorter" -> new Way.Shorter(slot(node), whole(node, "by"));
            case "help" -> new Way.Help(slot(node));
            case "instead" -> new Way.InsteadOf(text(node, "of"), slot(node));
            default -> throw new IllegalStateException("stored weeks know no way " + kind);
        };
    }

    private static ObjectNode root() {
        return JSON.createObjectNode().put("format", FORMAT);
    }

    private static JsonNode read(String text) {
        try {
            var root = JSON.readTree(text);
            if (root.required("format").asInt() != FORMAT) {
                throw new IllegalStateException("a stored week of another format");
            }
            return root;
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException("a stored week that is no JSON", notJson);
        }
    }

    private static <T> List<T> each(JsonNode array, Function<JsonNode, T> read) {
        var all = new ArrayList<T>();
        array.forEach(node -> all.add(read.apply(node)));
        return all;
    }

    private static void texts(ArrayNode array, Collection<String> texts) {
        texts.forEach(array::add);
    }

    private static List<String> texts(JsonNode node, String name) {
        return each(node.required(name), JsonNode::asText);
    }

    private static String text(JsonNode node, String name) {
        return node.required(name).asText();
    }

    private static int whole(JsonNode node, String name) {
        return node.required(name).asInt();
    }

    private static DayOfWeek day(JsonNode node) {
        return DayOfWeek.valueOf(text(node, "day"));
    }

    private static LocalTime time(JsonNode node, String name) {
        return LocalTime.parse(text(node, name));
    }
}
