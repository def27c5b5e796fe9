package org.hearthway.clinic.internal;

import java.util.List;

/** A real clinic lacks settings, or has wrong ones; the start stops. Carries all of them. */
class SettingsBroken extends RuntimeException {

    private final transient List<String> lines;

    SettingsBroken(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    List<String> lines() {
        return lines;
    }
}
