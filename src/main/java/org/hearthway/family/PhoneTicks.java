package org.hearthway.family;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Problem;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.HomeWeek.Tick;

/** Reads what a phone sends: each tick by itself, each field by its name. */
final class PhoneTicks {

    /** A tick as it was read, or what is wrong with it; its key where that could be read. */
    record Read(Optional<UUID> key, Optional<Tick> tick, List<Problem> problems) {}

    private static final int NAME = 80;

    private final JsonNode node;
    private final List<Problem> problems = new ArrayList<>();

    private PhoneTicks(JsonNode node) {
        this.node = node;
    }

    static Read read(JsonNode node) {
        return new PhoneTicks(node).read();
    }

    private Read read() {
        var key = text("key").flatMap(this::uuid);
        var exercise = text("exercise").filter(id -> id.length() <= NAME);
        var day = text("day").flatMap(this::date);
        var outcome = text("outcome").flatMap(name -> named(Outcome.values(), name));
        need("key", key);
        need("exercise", exercise);
        need("day", day);
        need("outcome", outcome);
        var reason = named("reason", Reason.values());
        var ratedBy = named("ratedBy", RatedBy.values());
        var effort = number("effort").map(PhoneTicks::small);
        var pain = number("pain").map(PhoneTicks::small);
        var version = number("version").map(PhoneTicks::small);
        var at = number("at").map(Instant::ofEpochMilli);
        need("at", at);
        var before = number("before").orElse(0L);
        var note = note();
        if (!problems.isEmpty()) {
            return new Read(key, Optional.empty(), problems);
        }
        var entry = new Entry(
                key.orElseThrow(),
                exercise.orElseThrow(),
                day.orElseThrow(),
                outcome.orElseThrow(),
                reason,
                effort,
                pain,
                ratedBy,
                note);
        return new Read(key, Optional.of(new Tick(entry, at.orElseThrow(), version, before)), List.of());
    }

    private Problem wrong(String field) {
        return Problem.at(field, "family.session.problem.field", field);
    }

    private void need(String field, Optional<?> found) {
        if (found.isEmpty()
                && problems.stream().noneMatch(problem -> problem.field().equals(field))) {
            problems.add(wrong(field));
        }
    }

    private Optional<JsonNode> given(String field) {
        return Optional.ofNullable(node.get(field)).filter(value -> !value.isNull());
    }

    private Optional<String> text(String field) {
        var given = given(field);
        if (given.isPresent() && !given.get().isTextual()) {
            problems.add(wrong(field));
            return Optional.empty();
        }
        return given.map(JsonNode::textValue);
    }

    private String note() {
        return text("note").orElse("");
    }

    private <T extends Enum<T>> Optional<T> named(String field, T[] values) {
        var given = text(field);
        var found = given.flatMap(name -> named(values, name));
        if (given.isPresent() && found.isEmpty()) {
            problems.add(wrong(field));
        }
        return found;
    }

    private static <T extends Enum<T>> Optional<T> named(T[] values, String name) {
        return List.of(values).stream()
                .filter(value -> value.name().equals(name))
                .findFirst();
    }

    /** A whole number; a clock may be wrong, but not by more than any calendar holds. */
    private Optional<Long> number(String field) {
        var given = given(field);
        if (given.isPresent() && !(given.get().isIntegralNumber() && given.get().canConvertToLong())) {
            problems.add(wrong(field));
            return Optional.empty();
        }
        return given.map(JsonNode::longValue);
    }

    /** Numbers beyond all bounds stay beyond them. */
    private static int small(long number) {
        return (int) Math.max(-1, Math.min(number, Integer.MAX_VALUE));
    }

    /** Only as phones write it: in other spellings one key would be several. */
    private Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text))
                    .filter(key -> key.toString().equals(text));
        } catch (IllegalArgumentException notAKey) {
            return Optional.empty();
        }
    }

    private Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }
}
