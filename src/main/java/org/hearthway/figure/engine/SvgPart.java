package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes shapes as SVG, one by one; with several poses of each, as shapes that go from one to the next. */
final class SvgPart {

    private final StringBuilder out;
    private final String prefix;
    private final Set<String> used;
    private int clips;

    /** Names inside the picture begin with the prefix, so that two pictures of a page do not mix. */
    SvgPart(StringBuilder out, String prefix, Set<String> used) {
        this.out = out;
        this.prefix = prefix;
        this.used = used;
    }

    void still(List<Shape> shapes) {
        shapes.forEach(shape -> write(List.of(shape)));
    }

    /** All poses hold the same shapes in the same order. */
    void moving(List<List<Shape>> poses) {
        for (int i = 0; i < poses.get(0).size(); i++) {
            var one = new ArrayList<Shape>();
            for (var pose : poses) {
                one.add(pose.get(i));
            }
            write(one);
        }
    }

    private void write(List<Shape> poses) {
        var shape = poses.get(0);
        var cut = "";
        if (shape.clip().isPresent()) {
            var id = prefix + "c" + clips++;
            out.append("<clipPath id=\"").append(id).append("\">");
            path(poses.stream().map(s -> s.clip().orElseThrow().data()).toList(), "");
            out.append("</clipPath>");
            cut = " clip-path=\"url(#" + id + ")\"";
        }
        path(poses.stream().map(s -> s.path().data()).toList(), dress(shape) + cut);
    }

    private String dress(Shape shape) {
        var classes = (shape.fill() + " " + shape.stroke()).strip();
        used.addAll(List.of(classes.split(" ")));
        var text = new StringBuilder(" class=\"").append(classes).append('"');
        if (shape.fill().isEmpty()) {
            text.append(" fill=\"none\"");
        }
        if (!shape.stroke().isEmpty()) {
            text.append(" stroke-width=\"").append(number(shape.width())).append('"');
        }
        if (!shape.fill().isEmpty() && !shape.stroke().isEmpty()) {
            text.append(" paint-order=\"stroke\"");
        }
        if (shape.key().equals("ghost")) {
            text.append(" stroke-dasharray=\"1 7\"");
        }
        return text.toString();
    }

    private void path(List<String> poses, String attributes) {
        out.append("<path d=\"").append(poses.get(0)).append('"').append(attributes);
        if (poses.stream().distinct().count() == 1) {
            out.append("/>");
            return;
        }
        out.append("><animate attributeName=\"d\"");
        animation(out, poses);
        out.append("</path>");
    }

    /** The rest of an element that goes through the key values in a picture's round. */
    static void animation(StringBuilder out, List<String> keys) {
        out.append(" dur=\"")
                .append(Cycle.SECONDS)
                .append("s\" repeatCount=\"indefinite\" calcMode=\"spline\" keyTimes=\"")
                .append(Cycle.times(keys.size()))
                .append("\" keySplines=\"")
                .append(Cycle.splines(keys.size()))
                .append("\" values=\"")
                .append(String.join(
                        ";", Cycle.order(keys.size()).stream().map(keys::get).toList()))
                .append("\"/>");
    }

    static String number(double value) {
        var text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
