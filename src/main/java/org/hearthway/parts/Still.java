package org.hearthway.parts;

import com.vaadin.flow.component.HtmlContainer;

/** One pose of an exercise's picture, as large as the place it stands in allows. */
public final class Still {

    /** Which pose. */
    public enum Pose {
        START,
        END
    }

    private Still() {}

    /**
     * Shows the picture at an address.
     *
     * @param ratio its width over its height
     * @param words describe it; empty where words beside it do
     */
    public static HtmlContainer of(String address, double ratio, Pose pose, String words) {
        var image = new HtmlContainer("img");
        image.addClassNames("hw-still", pose == Pose.START ? "start" : "end");
        image.getElement().setAttribute("alt", words);
        image.getElement().setAttribute("loading", "lazy");
        image.getElement().setAttribute("src", address);
        image.getStyle().set("--ratio", SvgText.number(ratio));
        return image;
    }
}
