package org.hearthway.parts;

import com.vaadin.flow.component.HtmlContainer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One pose out of an exercise's picture. A picture holds two poses side by side, start and end, in one file; a view
 * into the file shows one of them, so that the browser fetches it once.
 */
public final class Still {

    /** Which pose. */
    public enum Pose {
        START,
        END
    }

    private static final Pattern VIEW_BOX = Pattern.compile("viewBox=\"(-?[\\d.]+) (-?[\\d.]+) ([\\d.]+) ([\\d.]+)\"");
    private static final Pattern SECOND_POSE = Pattern.compile("translate\\(([\\d.]+) 0\\)");
    /** Height of the row of marks at the top of a picture; the page says side and seconds itself. */
    private static final double MARKS = 34;

    private static final Pattern MARK = Pattern.compile("translate\\((-?[\\d.]+) (-?[\\d.]+)\\)");
    private static final Map<String, Optional<Frames>> KNOWN = new ConcurrentHashMap<>();

    /** Where the poses lie in a picture. */
    record Frames(double x, double y, double width, double height, double second) {

        static Frames of(String svg) {
            var box = VIEW_BOX.matcher(svg);
            if (!box.find()) {
                throw new IllegalStateException("a picture without a view box");
            }
            var x = number(box, 1);
            var y = number(box, 2);
            var width = number(box, 3);
            var height = number(box, 4);
            var pose = SECOND_POSE.matcher(svg);
            var second = pose.find() ? number(pose, 1) : width / 2;
            var top = hasMarks(svg, y) ? MARKS : 0;
            return new Frames(x, y + top, width, height - top, second);
        }

        private static boolean hasMarks(String svg, double y) {
            return MARK.matcher(svg).results().anyMatch(m -> Double.parseDouble(m.group(2)) == y + 4);
        }

        private static double number(Matcher matcher, int group) {
            return Double.parseDouble(matcher.group(group));
        }

        private double shown() {
            return width - second;
        }

        String view(Pose pose) {
            var left = pose == Pose.START ? x : x + second;
            return "#svgView(viewBox(" + SvgText.number(left) + "," + SvgText.number(y) + "," + SvgText.number(shown())
                    + "," + SvgText.number(height) + "))";
        }

        double ratio() {
            return shown() / height;
        }
    }

    private Still() {}

    /** Draws a pose of the picture at an address such as {@code figure/stills/bridge.svg}; {@code words} describe it. */
    public static HtmlContainer of(String picture, Pose pose, String words) {
        var image = new HtmlContainer("img");
        image.addClassNames("hw-still", pose == Pose.START ? "start" : "end");
        image.getElement().setAttribute("alt", words);
        image.getElement().setAttribute("loading", "lazy");
        var frames = KNOWN.computeIfAbsent(picture, Still::read);
        image.getElement()
                .setAttribute("src", picture + frames.map(f -> f.view(pose)).orElse(""));
        frames.ifPresent(f -> image.getStyle().set("--ratio", SvgText.number(f.ratio())));
        return image;
    }

    private static Optional<Frames> read(String picture) {
        try (var file = Still.class.getResourceAsStream("/META-INF/resources/" + picture)) {
            return file == null
                    ? Optional.empty()
                    : Optional.of(Frames.of(new String(file.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
