package org.hearthway.content;

import java.util.List;

/** The content cannot be used; the start stops. Carries every mistake found. */
public class ContentBroken extends RuntimeException {

    private final transient List<String> lines;

    ContentBroken(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    /** Each mistake as {@code content/…:line: what is wrong, expected …}. */
    public List<String> lines() {
        return lines;
    }
}
