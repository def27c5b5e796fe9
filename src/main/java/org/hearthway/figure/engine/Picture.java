package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The pictures of one exercise, all of one size: start, end, both beside each other for paper, and the moving one.
 * The same sheet gives the same bytes, always.
 */
public final class Picture {

    private static final double MARGIN = 14;
    private static final double GAP = 26;
    private static final String SWAP = ".hw-fig .still{display:none}"
            + "@media print,(prefers-reduced-motion:reduce){.hw-fig .still{display:inline}"
            + ".hw-fig .moving{display:none}}";

    private final Scenery scenery;
    private final Motion motion;
    private final FigureSheet sheet;
    private final Box box;
    private final Box body;

    /** Settles all positions of the sheet. */
    public Picture(FigureSheet sheet) {
        this.sheet = sheet;
        this.motion = new Motion(Proportions.at(sheet.years()), sheet.supports(), sheet.stances());
        this.scenery = new Scenery(sheet, motion);
        var all = new ArrayList<>(scenery.at(0));
        all.addAll(scenery.at(1));
        all.addAll(scenery.arrows());
        this.body = Box.around(all.stream().filter(Shape::body).toList());
        // whoever stands up on the way must not lose the head in the moving picture
        for (int stop = 1; stop < motion.stops() - 1; stop++) {
            all.addAll(scenery.at((double) stop / (motion.stops() - 1)));
        }
        var around = Box.around(all);
        this.box = glass().map(Magnifier::place)
                .map(around::with)
                .orElse(around)
                .with(ground())
                .grown(MARGIN);
    }

    private Optional<Magnifier> glass() {
        return sheet.lens().map(lens -> new Magnifier(lens, scenery));
    }

    Motion motion() {
        return motion;
    }

    Scenery scenery() {
        return scenery;
    }

    /** What is wrong with the settled body, one sentence each; empty for a picture that can be shown. */
    public List<String> findings() {
        return new Findings(sheet, motion).all();
    }

    /** The angles of its positions that go beyond the norm for the child's age, the farthest of each movement. */
    public List<Norms.Beyond> beyondNorms() {
        var farthest = new LinkedHashMap<String, Norms.Beyond>();
        for (int stop = 0; stop < motion.stops(); stop++) {
            var pose = motion.at((double) stop / Math.max(1, motion.stops() - 1));
            for (var beyond : Norms.beyond(pose, sheet.years())) {
                farthest.merge(
                        beyond.side() + " " + beyond.joint() + " " + beyond.more(),
                        beyond,
                        (one, other) -> one.degrees() >= other.degrees() ? one : other);
            }
        }
        return List.copyOf(farthest.values());
    }

    private Box ground() {
        double y = sheet.view().page(Vec.ZERO).y() + 8;
        double half = body.width() / 2 + 8;
        double middle = (body.left() + body.right()) / 2;
        double rise = 7 + half * .07;
        return new Box(middle - half, y - rise, middle + half, y + rise);
    }

    /** Width over height of one position. */
    public double ratio() {
        return box.width() / box.height();
    }

    /** The first position. */
    public String start(Dress dress, String words) {
        return alone(0, dress, words);
    }

    /** The last position, with the dotted start behind it and the arrow. */
    public String end(Dress dress, String words) {
        return alone(1, dress, words);
    }

    private String alone(int time, Dress dress, String words) {
        var used = new LinkedHashSet<String>();
        var out = new StringBuilder();
        frame(out, time, dress.mirrored(), prefix(time == 0 ? "s" : "e"), used);
        return document(seen(dress), out, words, style(used, dress, false), "");
    }

    private String prefix(String name) {
        return "f-" + sheet.id() + "-" + name + "-";
    }

    private void frame(StringBuilder out, double time, boolean mirrored, String prefix, Set<String> used) {
        open(out, mirrored);
        around(out, prefix + "g", used, List.of(shade()));
        if (time == 1) {
            around(out, prefix + "h", used, scenery.ghost());
        }
        out.append("<g id=\"").append(prefix).append("all\">");
        around(out, prefix, used, scenery.at(time));
        out.append("</g>");
        glass().ifPresent(glass -> glass.write(out, prefix, used, List.of(time)));
        if (time == 1) {
            around(out, prefix + "a", used, scenery.arrows());
        }
        out.append("</g>");
    }

    private static void around(StringBuilder out, String prefix, Set<String> used, List<Shape> shapes) {
        new SvgPart(out, prefix, used).still(shapes);
    }

    private static void open(StringBuilder out, boolean mirrored) {
        out.append(mirrored ? "<g transform=\"scale(-1 1)\">" : "<g>");
    }

    private Shape shade() {
        var ground = ground();
        var shapes = new ArrayList<Shape>();
        var middle = new Point((ground.left() + ground.right()) / 2, (ground.top() + ground.bottom()) / 2);
        new Solid(sheet.view(), shapes, "ground", Layer.GROUND).shade(middle, ground.width() / 2, ground.height() / 2);
        return shapes.get(0);
    }

    /** Both positions beside each other in greys that a printer keeps apart, with marks above. */
    public String paper(Dress dress, Marks marks, String words) {
        var used = new LinkedHashSet<>(List.of("f-ink", "s-ink", "f-halo", "f-arrow"));
        var out = new StringBuilder();
        var shown = seen(dress);
        frame(out, 0, dress.mirrored(), prefix("p1"), used);
        double aside = shown.width() + GAP;
        out.append("<g transform=\"translate(").append(SvgPart.number(aside)).append(" 0)\">");
        frame(out, 1, dress.mirrored(), prefix("p2"), used);
        out.append("</g>");
        double top = shown.top() - Marks.HEIGHT;
        marks.write(out, shown.left(), top, false);
        marks.write(out, shown.left() + aside, top, true);
        return document(
                new Box(shown.left(), top, shown.right() + aside, shown.bottom()),
                out,
                words,
                style(used, dress, true),
                "");
    }

    /** Goes from start to end and back; still where motion is not wanted and on paper. */
    public String moving(Dress dress, String words) {
        var used = new LinkedHashSet<String>();
        var out = new StringBuilder();
        int keys = 3 * (motion.stops() - 1) + 1;
        var times = new ArrayList<Double>();
        for (int i = 0; i < keys; i++) {
            times.add((double) i / (keys - 1));
        }
        var prefix = prefix("m");
        out.append("<g class=\"moving\">");
        open(out, dress.mirrored());
        around(out, prefix + "g", used, List.of(shade()));
        out.append("<g id=\"").append(prefix).append("all\">");
        new MovingPart(out, prefix, used).write(times.stream().map(scenery::at).toList());
        out.append("</g>");
        glass().ifPresent(glass -> glass.write(out, prefix, used, times));
        out.append("</g></g><g class=\"still\">");
        frame(out, 1, dress.mirrored(), prefix("r"), used);
        out.append("</g>");
        return document(seen(dress), out, words, style(used, dress, false), SWAP);
    }

    private Box seen(Dress dress) {
        return dress.mirrored() ? box.mirrored() : box;
    }

    private String style(Set<String> used, Dress dress, boolean paper) {
        var colors = Palette.of(dress.tone() == 0 ? sheet.look().tone() : dress.tone(), paper);
        return used.stream()
                .filter(name -> !name.isEmpty())
                .sorted()
                .map(name -> "." + name + "{" + (name.startsWith("f-") ? "fill" : "stroke") + ":"
                        + Optional.ofNullable(colors.get(name)).orElseThrow() + "}")
                .collect(Collectors.joining());
    }

    /** Colours stand apart from the rest: a page that takes the picture in leaves them out and has its own. */
    private static String document(Box box, StringBuilder content, String words, String colors, String swap) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"hw-fig\" viewBox=\"" + box.viewBox()
                + "\" role=\"img\" stroke-linejoin=\"round\" stroke-linecap=\"round\"><title>" + Marks.escaped(words)
                + "</title><style class=\"alone\">" + colors + "</style>"
                + (swap.isEmpty() ? "" : "<style>" + swap + "</style>") + content + "</svg>";
    }
}
