package org.hearthway.figure.engine;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colours of a picture that stands alone or is printed. On a page of the program the same classes take the theme's
 * tokens instead.
 */
final class Palette {

    private static final String[] SKIN = {"#F3D3B8", "#E3B48C", "#BE855A", "#8A5A3A"};
    private static final String DARK_HAIR = "#1F1A17";
    private static final String WHITE = "#FFFFFF";

    private Palette() {}

    /** Colour of each class for a tone of skin from 1 to 4; black hair goes with the darker ones. */
    static Map<String, String> of(int tone, boolean paper) {
        var c = new LinkedHashMap<String, String>();
        var shirt = paper ? "#8D8D8D" : "#4F6F7A";
        var shorts = paper ? "#4D4D4D" : "#2F4A4D";
        var skin = SKIN[tone - 1];
        pair(c, "f-skin", skin, .66);
        pair(c, "f-shirt", shirt, .62);
        pair(c, "f-short", shorts, .62);
        pair(c, "s-ink", "#23302F", .72);
        c.put("f-ink", "#23302F");
        var hair = tone > 2 ? DARK_HAIR : "#4A342A";
        c.put("f-hair", hair);
        c.put("s-hair", hair);
        pair(c, "f-shoe", "#8A7E6C", .66);
        pair(c, "f-splint", "#EDEFF0", .8);
        pair(c, "f-h-skin", "#F6EEE6", .66);
        pair(c, "f-h-shirt", "#E9ECEA", .62);
        pair(c, "f-h-short", "#DDE2E0", .62);
        pair(c, "s-h-ink", "#7F8C8A", .72);
        c.put("f-h-hair", "#C3CBC9");
        c.put("s-h-hair", "#C3CBC9");
        c.put("f-h-ink", "#7F8C8A");
        things(c);
        var arrow = paper ? "#111111" : "#A8481F";
        c.put("f-arrow", arrow);
        c.put("s-arrow", arrow);
        c.put("s-ghost", "#74817E");
        c.put("f-ghost", paper ? WHITE : "#F9F5EF");
        c.put("f-halo", WHITE);
        c.put("s-halo", WHITE);
        c.put("f-lens", "#F8F4ED");
        c.put("f-floor", paper ? "#F0EFEA" : "#E6DAC8");
        return c;
    }

    private static void things(Map<String, String> c) {
        tones(c, "mat", "#E7DBC5", "#D3C6AC", "#C3B494");
        tones(c, "wood", "#F1E9D6", "#DDD0B2", "#CDBF9F");
        tones(c, "wall", "#F8F4ED", "#E6DDCF", "#E0D6C6");
        tones(c, "metal", "#DFE2E0", "#B9C0BC", "#A3A9A5");
        tones(c, "toy", "#D9BE80", "#C9A24A", "#B68F3E");
        c.put("s-mat", "#9C8A6B");
        c.put("s-thing", "#7C8783");
        c.put("s-metal", "#B9C0BC");
        c.put("s-toy", "#8F7335");
        c.put("s-toy-b", "#C9A24A");
        c.put("s-grip", "#5B6663");
    }

    private static void tones(Map<String, String> c, String name, String top, String front, String side) {
        c.put("f-" + name + "-a", top);
        c.put("f-" + name + "-b", front);
        c.put("f-" + name + "-c", side);
    }

    /** Far limbs are mixed toward white. */
    private static void pair(Map<String, String> c, String name, String near, double part) {
        c.put(name, near);
        c.put(name + "-far", mixed(near, part));
    }

    private static String mixed(String color, double part) {
        var out = new StringBuilder("#");
        for (int i = 1; i < 7; i += 2) {
            int tone = Integer.parseInt(color.substring(i, i + 2), 16);
            out.append(String.format(java.util.Locale.ROOT, "%02X", Math.round(tone * part + 255 * (1 - part))));
        }
        return out.toString();
    }
}
