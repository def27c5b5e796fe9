package org.hearthway.content.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.Hazards;
import org.springframework.context.annotation.Lazy;
import org.springframework.stereotype.Component;

/** Reads {@code content/hazards}, one file a field. That the named tests are there is a test of its own. */
@Component
class HazardKind implements ContentKind, Hazards {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern PROOF = Pattern.compile("([A-Z]\\w*(?:Tests|Properties|IT))#([a-z]\\w*)");

    private final Gate gate;
    private final List<Field> fields = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    HazardKind(@Lazy Gate gate) {
        this.gate = gate;
    }

    @Override
    public String place() {
        return "hazards";
    }

    @Override
    public void read(Entry file) {
        var name = file.bilingual("name");
        var hazards = new ArrayList<Hazard>();
        for (var block : file.list("hazards")) {
            hazards.add(hazard(block));
            block.done();
        }
        if (hazards.isEmpty()) {
            file.wrong("hazards", "\"hazards\" is missing or empty", "at least one hazard");
        }
        fields.add(new Field(name, hazards));
    }

    private Hazard hazard(Entry block) {
        var id = block.text("id");
        if (!ID.matcher(id).matches() || !ids.add(id)) {
            block.wrong("id", "\"id\" is " + id, "lower-case words with hyphens, each hazard once");
        }
        return new Hazard(
                id, block.bilingual("hazard"), block.bilingual("cause"), block.bilingual("control"), proofs(block));
    }

    private static List<Proof> proofs(Entry block) {
        var named = block.texts("tests");
        if (named.isEmpty()) {
            block.wrong(
                    "tests", "\"tests\" is missing or empty", "at least one test: what is not proved is no control");
        }
        if (new HashSet<>(named).size() < named.size()) {
            block.wrong("tests", "\"tests\" names a test twice", "each test once");
        }
        return named.stream().flatMap(text -> proof(block, text).stream()).toList();
    }

    private static Optional<Proof> proof(Entry block, String text) {
        var match = PROOF.matcher(text);
        if (!match.matches()) {
            block.wrong("tests", "\"tests\" names " + text, "a class and a method such as SignsTests#takesANote");
            return Optional.empty();
        }
        return Optional.of(new Proof(match.group(1), match.group(2)));
    }

    @Override
    public List<Field> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return List.copyOf(fields);
    }
}
