package org.hearthway.figure.internal;

import java.util.LinkedHashMap;
import java.util.List;
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

    private record Found(Read in, List<String> findings) {}

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

    List<String> names() {
        return read.keySet().stream().sorted().toList();
    }

    boolean has(String id) {
        return read.containsKey(id);
    }

    /** Settles all pictures, on all processors: they are many, and none knows of another. */
    @Override
    public void check() {
        read.values().parallelStream()
                .filter(one -> one.file().isSound())
                .map(one -> new Found(one, new Picture(one.sheet()).findings()))
                .toList()
                .forEach(found -> found.findings()
                        .forEach(finding -> found.in().file().wrong("end", finding, "a body that fits its supports")));
    }
}
