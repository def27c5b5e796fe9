package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;

/** The pictures over the 0 to 10 rows: stacked stones for work, pebble faces for pain. */
final class Faces {

    /** How wide and how high a picture is drawn. */
    static final List<Integer> SIZE = List.of(40, 35);

    /**
     * A piece of a picture.
     *
     * @param style its class
     * @param d the path
     */
    record Piece(String style, String d) {}

    private Faces() {}

    /** One stone more for each band. */
    static List<Piece> effortPieces(int band) {
        return IntStream.rangeClosed(0, band)
                .mapToObj(i -> new Piece(
                        "p sv-effort", Stone.outline(20, 28 - 7.2 * i, 10.6 - 1.8 * i, 4.4 - 0.35 * i, i + 40 + band)))
                .toList();
    }

    /** From at ease to crying out. */
    static List<Piece> painPieces(int band) {
        var face = Stream.of(new Piece("p", Stone.outline(20, 17.3, 17.2, 15.2, band + 60)));
        return Stream.concat(
                        face,
                        switch (band) {
                            case 0 -> Stream.of(eye(14, 15), eye(26, 15), line("M13.5 21.5c3.8 4 9.2 4 13 0"));
                            case 1 -> Stream.of(eye(14, 15), eye(26, 15), line("M14.5 23h11"));
                            case 2 ->
                                Stream.of(
                                        line("M11.2 13l4.6-2M28.8 13l-4.6-2"),
                                        eye(14, 16.5),
                                        eye(26, 16.5),
                                        line("M14 24.5c2-2 4-.2 6-1.2s4-1.2 6 .2"));
                            default ->
                                Stream.of(
                                        line("M10.8 12.4l5.2-3M29.2 12.4l-5.2-3M12 16.2c1.4 1.5 3.6 1.5 5 0"
                                                + "M23 16.2c1.4 1.5 3.6 1.5 5 0"),
                                        new Piece("e", "M14.3 27c.4-6.6 11-6.6 11.4 0-3-1.5-8.4-1.5-11.4 0z"));
                        })
                .toList();
    }

    private static Piece line(String d) {
        return new Piece("l", d);
    }

    private static Piece eye(double x, double y) {
        return new Piece(
                "e",
                "M" + SvgText.number(x - 1.7) + " " + SvgText.number(y) + "a1.7 2 0 1 0 3.4 0a1.7 2 0 1 0 -3.4 0z");
    }

    /** One stone more for each band. */
    static Component effort(int band) {
        return drawn(effortPieces(band));
    }

    /** From at ease to crying out. */
    static Component pain(int band) {
        return drawn(painPieces(band));
    }

    private static Component drawn(List<Piece> pieces) {
        var picture = new SvgText("hw-face", 0, 0, SIZE.get(0), SIZE.get(1)).decorative();
        pieces.forEach(piece -> picture.shape("path", "class", piece.style(), "d", piece.d()));
        return new Drawing(picture);
    }
}
