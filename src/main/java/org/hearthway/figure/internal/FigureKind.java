package org.hearthway.figure.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.figure.engine.FigureSheet;
import org.hearthway.figure.engine.Picture;
import org.springframework.stereotype.Component;

/**
 * Reads {@code content/figures}, one file a picture: every angle within what can be drawn, as written and as settled,
 * and every contact kept.
 */
@Component
class FigureKind implements ContentKind {

    private record Read(FigureSheet sheet, Entry file) {}

    private final Map<String, Read> read = new LinkedHashMap<>();

    @Override
    public String place() {
        return "figures";
    }

    @Override
    public void read(Entry file) {
        var sheet = new SheetReader(file).read();
        read.put(file.id(), new Read(sheet, file));
    }

    Optional<FigureSheet> find(String id) {
        return Optional.ofNullable(read.get(id)).map(Read::sheet);
    }

    boolean has(String id) {
        return read.containsKey(id);
    }

    @Override
    public void check() {
        read.values().forEach(one -> {
            if (one.file().isSound()) {
                new Picture(one.sheet())
                        .findings()
                        .forEach(finding -> one.file().wrong("end", finding, "a body that fits its supports"));
            }
        });
    }
}
