package org.hearthway.parts;

import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;

/** Something was worked on a page: the numbers in the top bar and the head of a folder are to be drawn anew. */
public class TallyChanged extends ComponentEvent<UI> {

    TallyChanged(UI page) {
        super(page, false);
    }

    /** Tells the frame around the page. */
    public static void tell() {
        var page = UI.getCurrent();
        ComponentUtil.fireEvent(page, new TallyChanged(page));
    }
}
