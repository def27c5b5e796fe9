package org.hearthway.family;

import com.vaadin.flow.component.Component;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;

/** The pictures over the 0 to 10 rows: stacked stones for work, pebble faces for pain. */
final class Faces {

    private Faces() {}

    private static SvgText canvas() {
        return new SvgText("hw-face", 0, 0, 40, 35).decorative();
    }

    /** One stone more for each band. */
    static Component effort(int band) {
        var picture = canvas();
        for (int i = 0; i <= band; i++) {
            picture.shape(
                    "path",
                    "class",
                    "p sv-effort",
                    "d",
                    Stone.outline(20, 28 - 7.2 * i, 10.6 - 1.8 * i, 4.4 - 0.35 * i, i + 40 + band));
        }
        return new Drawing(picture);
    }

    /** From at ease to crying out. */
    static Component pain(int band) {
        var picture = canvas().shape("path", "class", "p", "d", Stone.outline(20, 17.3, 17.2, 15.2, band + 60));
        switch (band) {
            case 0 -> eyes(picture, 15).shape("path", "class", "l", "d", "M13.5 21.5c3.8 4 9.2 4 13 0");
            case 1 -> eyes(picture, 15).shape("path", "class", "l", "d", "M14.5 23h11");
            case 2 ->
                eyes(picture.shape("path", "class", "l", "d", "M11.2 13l4.6-2M28.8 13l-4.6-2"), 16.5)
                        .shape("path", "class", "l", "d", "M14 24.5c2-2 4-.2 6-1.2s4-1.2 6 .2");
            default ->
                picture.shape(
                                "path",
                                "class",
                                "l",
                                "d",
                                "M10.8 12.4l5.2-3M29.2 12.4l-5.2-3M12 16.2c1.4 1.5 3.6 1.5 5 0M23 16.2c1.4 1.5 3.6 1.5 5 0")
                        .shape("path", "class", "e", "d", "M14.3 27c.4-6.6 11-6.6 11.4 0-3-1.5-8.4-1.5-11.4 0z");
        }
        return new Drawing(picture);
    }

    private static SvgText eyes(SvgText picture, double y) {
        for (var x : new String[] {"14", "26"}) {
            picture.shape("ellipse", "class", "e", "cx", x, "cy", SvgText.number(y), "rx", "1.7", "ry", "2");
        }
        return picture;
    }
}
