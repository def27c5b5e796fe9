package org.hearthway.figure.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.hearthway.base.Language;
import org.hearthway.figure.Figure;
import org.hearthway.figure.Figures;
import org.hearthway.figure.engine.Dress;
import org.hearthway.figure.engine.Picture;
import org.springframework.stereotype.Component;

/** Draws each picture when it is first asked for, and keeps it, packed. */
@Component
class DrawnFigures implements Figures {

    private static final int DIGEST = 16;

    /** Keeps those that were asked for last: whoever asks for all there could be fills no more than this. */
    private static final class Newest extends LinkedHashMap<String, Packed> {

        private static final long serialVersionUID = 1L;
        private static final int MOST = 500;

        Newest() {
            super(64, .75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Packed> eldest) {
            return size() > MOST;
        }
    }

    /** A picture packed for sending. */
    static final class Packed {

        private final String digest;
        private final byte[] gzip;

        Packed(String digest, byte[] gzip) {
            this.digest = digest;
            this.gzip = gzip;
        }

        String digest() {
            return digest;
        }

        byte[] gzip() {
            return gzip.clone();
        }

        byte[] unpacked() {
            try (var in = new GZIPInputStream(new ByteArrayInputStream(gzip))) {
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private final FigureKind content;
    private final FigureWords words;
    private final Map<String, Picture> pictures = new ConcurrentHashMap<>();
    private final Map<String, Packed> packed = Collections.synchronizedMap(new Newest());

    DrawnFigures(FigureKind content, FigureWords words) {
        this.content = content;
        this.words = words;
    }

    @Override
    public boolean has(String id) {
        return content.has(id);
    }

    @Override
    public Figure named(String id) {
        return new Drawn(id);
    }

    /** A picture by the last part of its address, such as {@code bridge-end-left-2-en}. */
    Optional<Packed> find(String name) {
        return FigureName.of(name).filter(of -> content.has(of.id())).map(this::packed);
    }

    private Picture picture(String id) {
        // not computeIfAbsent: drawing takes longer than others should wait for a neighbouring picture
        var known = pictures.get(id);
        if (known != null) {
            return known;
        }
        var sheet = content.find(id).orElseThrow(() -> new IllegalArgumentException("no picture " + id));
        var drawn = new Picture(sheet);
        pictures.put(id, drawn);
        return drawn;
    }

    private Packed packed(FigureName name) {
        var known = packed.get(name.text());
        if (known != null) {
            return known;
        }
        var fresh = pack(drawn(name));
        packed.put(name.text(), fresh);
        return fresh;
    }

    private String drawn(FigureName name) {
        var picture = picture(name.id());
        // one picture is drawn by one thread at a time: it keeps the poses that it has settled
        synchronized (picture) {
            var says = words.told(picture, name.language(), name.left());
            var dress = new Dress(name.left(), name.tone());
            return switch (name.shown()) {
                case START -> picture.start(dress, says);
                case END -> picture.end(dress, says);
                case MOVING -> picture.moving(dress, says);
                case PAPER ->
                    picture.paper(
                            dress,
                            words.marks(content.find(name.id()).orElseThrow(), name.language(), name.left()),
                            says);
            };
        }
    }

    private static Packed pack(String svg) {
        try {
            var bytes = svg.getBytes(StandardCharsets.UTF_8);
            var digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            var out = new ByteArrayOutputStream();
            try (var gzip = new GZIPOutputStream(out)) {
                gzip.write(bytes);
            }
            return new Packed(HexFormat.of().formatHex(digest).substring(0, DIGEST), out.toByteArray());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Looks its picture up when it is asked. */
    private final class Drawn implements Figure {

        private final String id;

        Drawn(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public String address(Shown shown, boolean left, int tone, Language language) {
            var name = new FigureName(id, shown, left, tone, language);
            return "figure/" + packed(name).digest() + "/" + name.text() + ".svg";
        }

        @Override
        public double ratio() {
            return picture(id).ratio();
        }

        @Override
        public String words(Language language, boolean left) {
            var picture = picture(id);
            synchronized (picture) {
                return words.told(picture, language, left);
            }
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Figure figure && id.equals(figure.id());
        }

        @Override
        public int hashCode() {
            return id.hashCode();
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "figure %s", id);
        }
    }
}
