package org.hearthway.medicine.internal;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.medicine.ToxinSessions.Muscle;
import org.springframework.stereotype.Component;

/** The muscles in {@code content/medicine/muscles.yaml}. Names say nothing medical, so nobody accepts them. */
@Component
class MuscleKind implements ContentKind {

    private final Map<String, Muscle> muscles = new LinkedHashMap<>();

    @Override
    public String place() {
        return "medicine/muscles.yaml";
    }

    @Override
    public void read(Entry file) {
        for (var block : file.list("muscles")) {
            var muscle = new Muscle(block.text("id"), block.bilingual("name"), block.bilingual("family"));
            block.done();
            if (muscles.putIfAbsent(muscle.id(), muscle) != null) {
                block.wrong("id", "a muscle \"" + muscle.id() + "\" stands already", "an identifier of its own");
            }
        }
    }

    List<Muscle> all() {
        return muscles.values().stream()
                .sorted(Comparator.comparing(muscle -> muscle.name().en()))
                .toList();
    }

    Optional<Muscle> find(String id) {
        return Optional.ofNullable(muscles.get(id));
    }
}
