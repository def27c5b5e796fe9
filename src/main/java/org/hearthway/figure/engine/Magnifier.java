package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A round glass beside the figure that shows a small joint larger, wherever the joint goes. */
final class Magnifier {

    private final FigureSheet.Lens lens;
    private final Scenery scenery;
    private final Point at;
    private final double radius;

    Magnifier(FigureSheet.Lens lens, Scenery scenery) {
        this.lens = lens;
        this.scenery = scenery;
        this.at = joint(0).plus(new Point(lens.right() * View.SCALE, -lens.up() * View.SCALE));
        this.radius = lens.radius() * View.SCALE;
    }

    private Point joint(double time) {
        return scenery.sheet().view().page(scenery.body(time).point(lens.of()).orElseThrow());
    }

    Box place() {
        return new Box(at.x() - radius, at.y() - radius, at.x() + radius, at.y() + radius).grown(4);
    }

    /** Looks at one time, or follows the joint through the key poses of a moving picture. */
    void write(StringBuilder out, String prefix, Set<String> used, List<Double> times) {
        var of = joint(times.get(0));
        var toward = at.minus(of).unit();
        var ring = Path.disc(at, radius);
        out.append("<clipPath id=\"")
                .append(prefix)
                .append("lens\"><path d=\"")
                .append(ring.data())
                .append("\"/></clipPath>");
        var back = new ArrayList<Shape>();
        if (times.size() == 1) {
            var leader = Path.polyline(List.of(of.plus(toward.times(14)), at.minus(toward.times(radius))));
            back.add(shape("ghost", leader, "", "s-ghost", 2.4));
        }
        back.add(shape("lens-ground", ring, "f-lens", "", 0));
        new SvgPart(out, prefix + "l", used).still(back);
        var moves = times.stream().map(time -> move(joint(time))).toList();
        out.append("<g clip-path=\"url(#")
                .append(prefix)
                .append("lens)\"><g transform=\"translate(")
                .append(moves.get(0))
                .append(")\">");
        if (moves.stream().distinct().count() > 1) {
            out.append("<animateTransform attributeName=\"transform\" type=\"translate\"");
            SvgPart.animation(out, moves);
        }
        out.append("<use href=\"#")
                .append(prefix)
                .append("all\" transform=\"scale(")
                .append(SvgPart.number(lens.zoom()))
                .append(")\"/></g></g>");
        new SvgPart(out, prefix + "r", used).still(List.of(shape("lens-ring", ring, "", "s-ink", 2.6)));
    }

    private String move(Point of) {
        return String.format(Locale.ROOT, "%.1f %.1f", at.x() - of.x() * lens.zoom(), at.y() - of.y() * lens.zoom());
    }

    private static Shape shape(String key, Path path, String fill, String stroke, double width) {
        return new Shape(key, path, fill, stroke, width, Optional.empty(), Layer.HELPING_HAND, false);
    }
}
