package org.hearthway.shell;

import com.vaadin.flow.component.UI;
import org.hearthway.base.Language;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;

/** What a frame tells the browser about its page, and the mark of the house. */
final class Pages {

    private Pages() {}

    static void language(Language language) {
        var ui = UI.getCurrent();
        ui.setLocale(language.locale());
        ui.getPage().executeJs("document.documentElement.lang = $0", language.tag());
    }

    static void density(String density) {
        UI.getCurrent().getPage().executeJs("document.documentElement.dataset.density = $0", density);
    }

    static Drawing mark() {
        return new Drawing(new SvgText("hw-mark", 0, 0, 28, 28)
                .decorative()
                .shape("path", "class", "mk-a", "d", "M5 24V13.5a9 9 0 0 1 18 0V24M2 24h24")
                .shape("path", "class", "mk-l", "d", Stone.outline(14, 18.4, 4.4, 3.4, 3)));
    }
}
