package org.hearthway.program.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.path.PrecautionNames;
import org.springframework.stereotype.Component;

/** The movements that a rule of care can forbid, each with its short name; an exercise carries only known ones. */
@Component
class PrecautionTags implements ContentKind, PrecautionNames {

    private final Map<String, Bilingual> names = new LinkedHashMap<>();

    @Override
    public String place() {
        return "precautions.yaml";
    }

    @Override
    public void read(Entry file) {
        for (var tag : file.keys()) {
            names.put(tag, file.bilingual(tag));
        }
    }

    @Override
    public Set<String> names() {
        return Set.copyOf(names.keySet());
    }

    Set<String> all() {
        return names.keySet();
    }

    Optional<Bilingual> name(String tag) {
        return Optional.ofNullable(names.get(tag));
    }
}
