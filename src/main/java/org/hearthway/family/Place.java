package org.hearthway.family;

import org.hearthway.parts.Icon;

/** The five places of the bottom bar. */
enum Place {
    TODAY("today", Icon.TODAY),
    WEEK("week", Icon.WEEK),
    PATH("path", Icon.PATH),
    DATES("dates", Icon.DATES),
    CALL("call", Icon.CALL);

    private final String address;
    private final Icon icon;

    Place(String address, Icon icon) {
        this.address = address;
        this.icon = icon;
    }

    String address() {
        return address;
    }

    Icon icon() {
        return icon;
    }

    /** Key of its word. */
    String key() {
        return "family.place." + address;
    }
}
