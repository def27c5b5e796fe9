package org.hearthway.program.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.program.Exercise.Named;

/** A file of short names, which exercises refer to: {@code calf: {en: …, es: …}}. */
abstract class NamedThings implements ContentKind {

    private final String place;
    private final Map<String, Bilingual> names = new LinkedHashMap<>();

    NamedThings(String place) {
        this.place = place;
    }

    @Override
    public String place() {
        return place;
    }

    @Override
    public void read(Entry file) {
        for (var id : file.keys()) {
            names.put(id, file.bilingual(id));
        }
    }

    boolean knows(String id) {
        return names.containsKey(id);
    }

    Iterable<String> all() {
        return names.keySet();
    }

    /** Those of the identifiers that are known, named. */
    List<Named> named(List<String> ids) {
        return ids.stream()
                .filter(this::knows)
                .map(id -> new Named(id, Objects.requireNonNull(names.get(id))))
                .toList();
    }
}
