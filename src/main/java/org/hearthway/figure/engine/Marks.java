package org.hearthway.figure.engine;

import java.util.Optional;

/**
 * What stands above a printed picture.
 *
 * @param side letter of the side, in the reader's language; empty when both sides do the same
 * @param hold how long the last position is held, in words; empty when it is not
 */
public record Marks(Optional<String> side, Optional<String> hold) {

    static final double HEIGHT = 34;

    void write(StringBuilder out, double x, double y, boolean withHold) {
        double at = x + 4;
        if (side.isPresent()) {
            out.append(String.format(
                    java.util.Locale.ROOT,
                    "<g transform=\"translate(%.1f %.1f)\"><rect width=\"26\" height=\"26\" rx=\"8\" class=\"f-ink\"/>"
                            + "<text x=\"13\" y=\"19\" font-family=\"sans-serif\" font-weight=\"700\" font-size=\"17\""
                            + " class=\"f-halo\" text-anchor=\"middle\">%s</text></g>",
                    at,
                    y + 4,
                    escaped(side.get())));
            at += 34;
        }
        if (withHold && hold.isPresent()) {
            out.append(String.format(
                    java.util.Locale.ROOT,
                    "<g transform=\"translate(%.1f %.1f)\"><circle cx=\"13\" cy=\"13\" r=\"11.5\" class=\"f-halo s-ink\""
                            + " stroke-width=\"2.4\"/><path d=\"M13 13V4.5A8.5 8.5 0 1 1 5.6 17.2Z\" class=\"f-arrow\"/>"
                            + "<text x=\"31\" y=\"19\" font-family=\"sans-serif\" font-weight=\"600\" font-size=\"16\""
                            + " class=\"f-ink\">%s</text></g>",
                    at,
                    y + 4,
                    escaped(hold.get())));
        }
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
