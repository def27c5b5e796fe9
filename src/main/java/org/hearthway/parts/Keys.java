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

    /**
     * Brings the keys back, once something is drawn anew.
     *
     * @param place a row: to the control in it that had them before, else to the row itself; something else, such as a
     *     table: to the row and control where they were
     */
    public static void back(HasElement place) {
        place.getElement().executeJs("this.dispatchEvent(new Event('hw-keys-back', {bubbles:true}))");
    }

    /**
     * Lets a number be changed by arrows, in small steps, and by the page keys, in large ones; Enter and Escape lead back
     * to its row.
     *
     * @param step the small step
     * @param leap the large one
     * @param min where steps down end
     * @param max where steps up end
     */
    public static <T extends Component> T steps(T number, double step, double leap, double min, double max) {
        number.getElement()
                .setAttribute("data-step", String.valueOf(step))
                .setAttribute("data-leap", String.valueOf(leap))
                .setAttribute("data-min", String.valueOf(min))
                .setAttribute("data-max", String.valueOf(max))
                .setAttribute("aria-keyshortcuts", "ArrowUp ArrowDown PageUp PageDown");
        return number;
    }

    /** Makes a button switch the keys of all staff pages off, and on again, in this browser. */
    public static <T extends Component> T toggle(T button) {
        button.getElement().setAttribute("data-keys-switch", "");
        button.getElement().executeJs("this.dispatchEvent(new Event('hw-keys-switch', {bubbles:true}))");
        return button;
    }
}
