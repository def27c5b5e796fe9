package org.hearthway.parts;

import com.vaadin.flow.component.Component;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** The icons: 24 by 24, one stroke, each with one filled stone. A word stands beside each, or its control is named. */
public enum Icon {
    TODAY,
    WEEK,
    PATH,
    DATES,
    CALL,
    NOTES,
    STRETCH,
    STRENGTH,
    STAND,
    WALK,
    BALANCE,
    ARM,
    REFILL,
    REHAB,
    SURGERY,
    CHECK,
    MOVE,
    PRINT,
    PHONE,
    TEXT,
    MAIL,
    NOW,
    URGENT,
    HOURS,
    BACK,
    NEXT,
    DOWN,
    UP,
    PLUS,
    MINUS,
    CLOSE,
    SEARCH,
    PLAY,
    PAUSE,
    REST,
    INFO,
    LOCK,
    SECOND,
    WHY,
    PERSON,
    SIGNIN,
    MORE,
    EASIER,
    HARDER,
    UNDO,
    CLASH,
    AWAY,
    PICTURES,
    VOICE,
    QUILT;

    private static final Pattern SYMBOL =
            Pattern.compile("<symbol id=\"i-([a-z]+)\" viewBox=\"0 0 24 24\">(.*?)</symbol>", Pattern.DOTALL);
    private static final Map<String, String> SHAPES = read();

    private static Map<String, String> read() {
        try (var file = Icon.class.getResourceAsStream("/META-INF/resources/look/icons.svg")) {
            if (file == null) {
                throw new IllegalStateException("icons.svg is not on the class path");
            }
            var shapes = new HashMap<String, String>();
            var matcher = SYMBOL.matcher(new String(file.readAllBytes(), StandardCharsets.UTF_8));
            while (matcher.find()) {
                shapes.put(matcher.group(1), matcher.group(2));
            }
            return Map.copyOf(shapes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The icon as a component, hidden from assistive technology: the word beside it speaks. */
    public Component draw(String... sizes) {
        var shape = SHAPES.get(name().toLowerCase(java.util.Locale.ROOT));
        if (shape == null) {
            throw new IllegalStateException("no shape for icon " + name());
        }
        var classes = ("hw-icon " + String.join(" ", sizes)).strip();
        return new Drawing(new SvgText(classes, 0, 0, 24, 24).decorative().own(shape));
    }
}
