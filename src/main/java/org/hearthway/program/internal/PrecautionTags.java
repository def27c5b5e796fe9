package org.hearthway.program.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** The movements that a rule of care can forbid, each with its short name; an exercise carries only known ones. */
@Component
class PrecautionTags implements ContentKind {

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

    Set<String> all() {
        return names.keySet();
    }

    Optional<Bilingual> name(String tag) {
        return Optional.ofNullable(names.get(tag));
    }
}
