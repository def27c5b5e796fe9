package org.hearthway.parts;

import java.util.Locale;

/** Writes SVG markup with every attribute and text escaped; the only way markup of ours reaches a page. */
public final class SvgText {

    private final StringBuilder out = new StringBuilder();

    /** Begins a picture with a view box; {@code classes} may be empty. */
    public SvgText(String classes, double x, double y, double width, double height) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"")
                .append(number(x))
                .append(' ')
                .append(number(y))
                .append(' ')
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append('"');
        attribute("class", classes);
    }

    private boolean rootOpen = true;

    /** Names the picture for assistive technology. */
    public SvgText named(String label) {
        attribute("role", "img");
        attribute("aria-label", label);
        return closeRoot();
    }

    /** Says that the picture only repeats what stands in words beside it. */
    public SvgText decorative() {
        attribute("aria-hidden", "true");
        return closeRoot();
    }

    private SvgText closeRoot() {
        out.append('>');
        rootOpen = false;
        return this;
    }

    private void attribute(String name, String content) {
        out.append(' ').append(name).append("=\"").append(escape(content)).append('"');
    }

    /** An element without content, with attributes given as name, content, name, content. */
    public SvgText shape(String tag, String... attributes) {
        open(tag, attributes);
        out.append("/>");
        return this;
    }

    /** A text at a point. */
    public SvgText text(double x, double y, String classes, String anchor, String words) {
        open("text", "x", number(x), "y", number(y), "class", classes, "text-anchor", anchor);
        out.append('>').append(escape(words)).append("</text>");
        return this;
    }

    /** Begins a group; end it with {@link #end}. */
    public SvgText group(String... attributes) {
        open("g", attributes);
        out.append('>');
        return this;
    }

    /** Ends a group. */
    public SvgText end() {
        out.append("</g>");
        return this;
    }

    /** Takes in markup from a file of ours, as it is. */
    SvgText own(String markup) {
        out.append(markup);
        return this;
    }

    private void open(String tag, String... attributes) {
        if (rootOpen) {
            throw new IllegalStateException("say named or decorative first");
        }
        out.append('<').append(tag);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            attribute(attributes[i], attributes[i + 1]);
        }
    }

    /** A coordinate with at most two decimals and a point, whatever the machine's locale. */
    public static String number(double coordinate) {
        var text = String.format(Locale.ROOT, "%.2f", coordinate);
        return text.replaceAll("\\.?0+$", "");
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    @Override
    public String toString() {
        return out + "</svg>";
    }
}
