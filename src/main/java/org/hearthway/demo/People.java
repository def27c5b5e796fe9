package org.hearthway.demo;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthway.access.NewAccount;
import org.hearthway.access.OnCall;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The people of the demo clinic, as they stand in {@code content/demo/people.yaml}. Read everywhere, used in the demo only. */
@Component
class People implements ContentKind {

    private final Map<String, NewAccount> all = new LinkedHashMap<>();
    private String passPhrase = "";
    private @Nullable Duty duty;

    @Override
    public String place() {
        return "demo/people.yaml";
    }

    @Override
    public void read(Entry file) {
        passPhrase = file.text("pass-phrase");
        duty = duty(file.block("on-call"));
        for (var person : file.list("people")) {
            var key = person.text("key");
            if (all.put(key, account(person)) != null) {
                person.wrong("key", "\"" + key + "\" stands twice", "a key of its own");
            }
            person.done();
        }
    }

    /** Who is on call, by keys. */
    record Duty(int minutes, List<String> office, List<String> outside, String missed) {}

    private static Duty duty(Entry block) {
        var duty = new Duty(
                block.integer("minutes", OnCall.LEAST_MINUTES, OnCall.MOST_MINUTES),
                block.texts("office"),
                block.texts("outside"),
                block.text("missed"));
        block.done();
        return duty;
    }

    private static NewAccount account(Entry person) {
        var roles = person.choices("roles", Role.class);
        return new NewAccount(
                person.text("name"),
                invented(person, "email", ".*\\.example", "an address under .example"),
                invented(person, "phone", "555-01\\d\\d", "a number from 555-0100 to 555-0199"),
                roles.isEmpty() ? Set.of() : EnumSet.copyOf(roles),
                person.choice("language", Language.class),
                zone(person));
    }

    /** Nothing in the demo may reach a real person. */
    private static String invented(Entry person, String key, String pattern, String expected) {
        var text = person.text(key);
        if (!text.matches(pattern)) {
            person.wrong(key, "\"" + text + "\" could be somebody’s", expected);
        }
        return text;
    }

    private static ZoneId zone(Entry person) {
        var text = person.maybeText("zone").orElse("America/New_York");
        try {
            return ZoneId.of(text);
        } catch (DateTimeException unknown) {
            person.wrong("zone", "\"" + text + "\" is no time zone", "a zone such as America/New_York");
            return ZoneId.of("UTC");
        }
    }

    Map<String, NewAccount> all() {
        return all;
    }

    Duty duty() {
        return java.util.Objects.requireNonNull(duty, "content/demo/people.yaml was not read");
    }

    /** The one pass phrase of all demo accounts. */
    String passPhrase() {
        return passPhrase;
    }
}
