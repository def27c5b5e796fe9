package org.hearthway.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasElement;

/**
 * Names keys for rows and controls of a staff page. The browser moves from row to row with J and K and presses the
 * control that has the key; the script comes with {@link KeyBar}, which tells people about them.
 */
public final class Keys {

    private Keys() {}

    /** Makes an element a row that J and K reach. The identifier stays the same while the row is about the same. */
    public static <T extends HasElement> T row(T row, String id) {
        row.getElement().setAttribute("data-row", id);
        row.getElement().setAttribute("tabindex", "0");
        return row;
    }

    /**
     * Lets a key press a control.
     *
     * @param key the key's name in lower case, such as {@code a}, {@code enter}, {@code space}, {@code shift+x}
     */
    public static <T extends Component> T press(T control, String key) {
        control.getElement().setAttribute("data-key", key);
        return control;
    }

    /** Brings the keys to a row, once it is drawn. */
    public static void focus(HasElement row) {
        row.getElement().callJsFunction("focus");
    }
}
