package org.hearthway.family;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.program.Exercise.Kind;
import org.hearthway.program.engine.trend.Quilt.Patch;

/**
 * A quilt, sewn of a patch a week: cloth and pattern come from the number of the patch, and what is sewn onto it from the
 * kinds of exercises of that week. Two patches beside each other never have the same cloth.
 */
final class QuiltPicture {

    private static final int IN_A_ROW = 4;
    private static final double SIDE = 84;
    private static final double SEAM = 4;
    private static final int CLOTHS = 5;
    private static final int PATTERNS = 6;
    private static final int MOST_SEWN_ON = 4;
    private static final double SMALL = 0.62;

    private QuiltPicture() {}

    /** The whole quilt; the newest patch is the last. */
    static Drawing of(List<Patch> patches, String label) {
        var rows = (patches.size() + IN_A_ROW - 1) / IN_A_ROW;
        var step = SIDE + SEAM;
        var picture = new SvgText("hw-quilt", 0, 0, IN_A_ROW * step + SEAM, rows * step + SEAM).named(label);
        for (int i = 0; i < patches.size(); i++) {
            var row = i / IN_A_ROW;
            patch(picture, patches.get(i), SEAM + (i - row * IN_A_ROW) * step, SEAM + row * step);
        }
        return new Drawing(picture);
    }

    /** What a kind of exercise looks like on a patch, for the words beside it. */
    static Drawing sample(Kind kind) {
        var picture = new SvgText("hw-sewn", -20, -20, 40, 40).decorative();
        sew(picture, kind.name(), 0, 0, 1);
        return new Drawing(picture);
    }

    private static void patch(SvgText picture, Patch patch, double x, double y) {
        var number = patch.number() - 1;
        // in the next row the cloths stand shifted by two
        var cloth = (number + number / IN_A_ROW * 2) % CLOTHS;
        picture.shape("path", "class", "qu-cloth c" + cloth, "d", square(x, y, SIDE, number));
        pattern(picture, number % PATTERNS, x, y, cloth);
        picture.shape("path", "class", "qu-stitch", "d", square(x + 5, y + 5, SIDE - 10, number + 3));
        var sewn = new ArrayList<String>();
        Arrays.stream(Kind.values())
                .map(Kind::name)
                .filter(patch.kinds()::contains)
                .limit(MOST_SEWN_ON)
                .forEach(sewn::add);
        var middle = SIDE / 2;
        if (sewn.size() < 2) {
            sew(picture, sewn.isEmpty() ? "" : sewn.get(0), x + middle, y + middle, 1.25);
            return;
        }
        for (int i = 0; i < sewn.size(); i++) {
            var angle = -Math.PI / 2 + 2 * Math.PI * i / sewn.size() + (sewn.size() == 2 ? Math.PI / 4 : 0);
            sew(
                    picture,
                    sewn.get(i),
                    x + middle + 19 * Math.cos(angle),
                    y + middle + 19 * Math.sin(angle),
                    SMALL + (sewn.size() == 2 ? 0.2 : 0));
        }
    }

    /** Cut by hand: no corner is quite square. */
    private static String square(double x, double y, double side, int seed) {
        var off = new double[] {(seed * 7 % 5 - 2) * 0.6, (seed * 11 % 5 - 2) * 0.6, (seed * 13 % 5 - 2) * 0.6};
        return "M" + n(x + off[0]) + " " + n(y + off[1]) + "L" + n(x + side + off[1]) + " " + n(y + off[2]) + "L"
                + n(x + side + off[2]) + " " + n(y + side + off[0]) + "L" + n(x + off[1]) + " " + n(y + side + off[2])
                + "Z";
    }

    private static void pattern(SvgText picture, int pattern, double x, double y, int cloth) {
        var style = "qu-piece c" + (cloth + 2) % CLOTHS;
        var s = SIDE;
        var h = s / 2;
        for (var path : pieces(pattern, s, h)) {
            picture.shape("path", "class", style, "transform", "translate(" + n(x) + " " + n(y) + ")", "d", path);
        }
    }

    private static List<String> pieces(int pattern, double s, double h) {
        var q = s / 4;
        return switch (pattern) {
            case 0 ->
                List.of(
                        "M0 0H" + n(q) + "L0 " + n(q) + "Z",
                        corner(s, 0, -q, q),
                        corner(s, s, -q, -q),
                        corner(0, s, q, -q));
            case 1 ->
                List.of("M" + n(h) + " 8L" + n(s - 8) + " " + n(h) + "L" + n(h) + " " + n(s - 8) + "L8 " + n(h) + "Z");
            case 2 -> List.of("M0 10H" + n(s) + "v8H0Z", "M0 " + n(s - 18) + "H" + n(s) + "v8H0Z");
            case 3 ->
                List.of(
                        "M0 0H" + n(h) + "L0 " + n(h) + "Z",
                        "M" + n(s) + " 0V" + n(h) + "L" + n(h) + " 0Z",
                        "M" + n(s) + " " + n(s) + "H" + n(h) + "L" + n(s) + " " + n(h) + "Z",
                        "M0 " + n(s) + "V" + n(h) + "L" + n(h) + " " + n(s) + "Z");
            case 4 ->
                List.of(
                        "M" + n(h - 9) + " 0h18V" + n(s) + "h-18Z",
                        "M0 " + n(h - 9) + "H" + n(h - 9) + "v18H0Z",
                        "M" + n(h + 9) + " " + n(h - 9) + "H" + n(s) + "v18H" + n(h + 9) + "Z");
            default -> List.of(Stone.outline(h, h, 31, 31, 5));
        };
    }

    private static String corner(double x, double y, double dx, double dy) {
        return "M" + n(x) + " " + n(y) + "H" + n(x + dx) + "L" + n(x) + " " + n(y + dy) + "Z";
    }

    /** A figure of cloth around a point, at most 36 wide. */
    private static void sew(SvgText picture, String kind, double x, double y, double size) {
        picture.group("transform", "translate(" + n(x) + " " + n(y) + ") scale(" + n(size) + ")");
        picture.shape("path", "class", "qu-ground", "d", Stone.outline(0, 0, 18, 17, kind.length() + 9));
        figure(kind).forEach(path -> picture.shape("path", "class", "qu-sewn " + thread(kind), "d", path));
        lines(kind).ifPresent(path -> picture.shape("path", "class", "qu-line", "d", path));
        picture.end();
    }

    private static String thread(String kind) {
        return switch (kind) {
            case "STRETCH", "TRUNK" -> "moss";
            case "STRENGTH", "TRANSFER" -> "kiln";
            case "POSITION", "BALANCE", "ARM" -> "ember";
            default -> "river";
        };
    }

    private static List<String> figure(String kind) {
        return switch (kind) {
            // a leaf
            case "STRETCH" -> List.of("M-11 9C-11 -6 -2 -11 11 -11C11 3 4 10 -11 9Z");
            // a mountain
            case "STRENGTH" -> List.of("M-13 9L-3 -9L2 -1L5 -5L13 9Z");
            // a sun that stands still over the ground
            case "POSITION" -> List.of("M-9 5A9 9 0 0 1 9 5Z");
            // two shoes
            case "WALK" -> List.of(Stone.outline(-5, 3, 3.6, 7.5, 3), Stone.outline(5, -3, 3.6, 7.5, 4));
            // a bird
            case "BALANCE" -> List.of("M-12 -1C-6 -8 1 -6 3 -2L12 -5L6 3C2 9 -7 8 -12 -1Z");
            // a bridge
            case "TRANSFER" -> List.of("M-13 8V1C-8 -9 8 -9 13 1V8H8C8 -1 -8 -1 -8 8Z");
            // a ball
            case "ARM" -> List.of(Stone.outline(0, 0, 10, 10, 7));
            // a tree
            case "TRUNK" -> List.of("M-2.5 11V2H2.5V11Z", Stone.outline(0, -4, 9, 8, 8));
            // a cloud
            case "BREATH" -> List.of("M-11 6C-16 -1 -8 -6 -6 -3C-4 -11 6 -10 6 -3C13 -5 14 5 9 6Z");
            // a button
            default -> List.of(Stone.outline(0, 0, 7, 7, 2));
        };
    }

    private static Optional<String> lines(String kind) {
        return switch (kind) {
            case "STRETCH" -> Optional.of("M-13 12L7 -7");
            case "POSITION" -> Optional.of("M-13 8H13M0 -8V-12M-8 -4L-11 -7M8 -4L11 -7");
            case "ARM" -> Optional.of("M-9 -3C-3 1 3 1 9 -3M-3 9C0 3 0 -3 -3 -9");
            case "BREATH" -> Optional.of("M-8 11H3M-2 14.5H7");
            case "BALANCE" -> Optional.of("M-1 8V12M2 8V12");
            default -> Optional.empty();
        };
    }

    private static String n(double coordinate) {
        return SvgText.number(coordinate);
    }
}
