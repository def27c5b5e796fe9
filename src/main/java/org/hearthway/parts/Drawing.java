package org.hearthway.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasStyle;
import com.vaadin.flow.component.Tag;

/** A picture drawn by us in the page itself, so that it takes the theme's colours. */
@Tag("span")
public class Drawing extends Component implements HasStyle {

    /** Shows the picture. */
    public Drawing(SvgText picture) {
        addClassName("hw-drawing");
        // the one place where markup is set: SvgText escapes everything it is given
        getElement().setProperty("innerHTML", picture.toString());
    }
}
