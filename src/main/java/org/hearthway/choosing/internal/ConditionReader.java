package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.engine.Condition;
import org.hearthway.content.Entry;

/**
 * Reads conditions: {@code {fact: walking, is: [walker, crutches]}}, {@code {age: {from: 3, to: 9}}}, and
 * {@code all: […]}, {@code any: […]}, {@code not: {…}} of them. Whether facts and choices exist is checked once all
 * files are read.
 */
final class ConditionReader {

    private static final int OLDEST = 25;
    private static final Set<String> KINDS = Set.of("fact", "age", "all", "any", "not");
    private static final String EXPECTED = "one of fact, age, all, any, not";

    private record Read(Entry block, Condition.Is is) {}

    private final List<Read> read = new ArrayList<>();

    /** The condition at a key. */
    Condition at(Entry entry, String key) {
        return condition(entry.block(key));
    }

    private Condition condition(Entry block) {
        var kinds = KINDS.stream().filter(block::has).count();
        if (kinds != 1) {
            block.wrong("", kinds == 0 ? "no condition stands here" : "several conditions stand here", EXPECTED);
        }
        var made = made(block);
        block.done();
        return made;
    }

    private Condition made(Entry block) {
        if (block.has("age")) {
            return aged(block.block("age"));
        }
        if (block.has("all")) {
            return new Condition.All(several(block, "all"));
        }
        if (block.has("any")) {
            return new Condition.Any(several(block, "any"));
        }
        if (block.has("not")) {
            return new Condition.Not(at(block, "not"));
        }
        var is = new Condition.Is(block.text("fact"), Set.copyOf(block.texts("is")));
        if (is.choices().isEmpty()) {
            block.wrong("is", "\"is\" is missing or empty", "a list of choices of the fact");
        }
        read.add(new Read(block, is));
        return is;
    }

    private static Condition aged(Entry ages) {
        var aged = new Condition.Aged(ages.maybeInteger("from", 0, OLDEST), ages.maybeInteger("to", 0, OLDEST));
        ages.done();
        if (aged.from().isEmpty() && aged.to().isEmpty()) {
            ages.wrong("from", "the age has no bound", "from, to, or both");
        }
        if (aged.from().flatMap(least -> aged.to().filter(most -> most < least)).isPresent()) {
            ages.wrong("to", "\"to\" lies before \"from\"", "the same age or a later one");
        }
        return aged;
    }

    private List<Condition> several(Entry block, String key) {
        var several = block.list(key).stream().map(this::condition).toList();
        if (several.size() < 2) {
            block.wrong(key, "\"" + key + "\" has less than two conditions", "two or more");
        }
        return several;
    }

    /** Notes every fact and choice that does not exist. */
    void check(Map<String, Fact> facts) {
        for (var each : read) {
            var fact = Optional.ofNullable(facts.get(each.is().fact()));
            if (fact.isEmpty()) {
                each.block()
                        .wrong(
                                "fact",
                                "there is no fact \"" + each.is().fact() + "\"",
                                "one of " + facts.keySet().stream().sorted().collect(Collectors.joining(", ")));
                continue;
            }
            each.is().choices().stream()
                    .sorted()
                    .filter(choice -> fact.get().choice(choice).isEmpty())
                    .forEach(choice -> each.block()
                            .wrong(
                                    "is",
                                    "\"" + each.is().fact() + "\" has no choice \"" + choice + "\"",
                                    "one of " + choices(fact.get())));
        }
    }

    private static String choices(Fact fact) {
        return fact.choices().stream().map(Fact.Choice::id).collect(Collectors.joining(", "));
    }
}
