package org.hearthway.content;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Collects what is wrong in content, each with file, line, what is wrong and what was expected. */
public final class Mistakes {

    private record Mistake(String file, int line, String text) implements Comparable<Mistake> {
        @Override
        public int compareTo(Mistake other) {
            return java.util.Comparator.comparing(Mistake::file)
                    .thenComparingInt(Mistake::line)
                    .thenComparing(Mistake::text)
                    .compare(this, other);
        }
    }

    private final List<Mistake> found = new ArrayList<>();

    void add(String file, int line, String wrong, String expected) {
        found.add(new Mistake(file, line, wrong + ", expected " + expected));
    }

    boolean areNoneIn(String file) {
        return found.stream().noneMatch(mistake -> mistake.file().equals(file));
    }

    /** Line and what is wrong with it, in the order of lines; for a file alone. */
    List<TriedFile.Mistake> byLine() {
        return found.stream()
                .sorted()
                .distinct()
                .map(m -> new TriedFile.Mistake(m.line, m.text))
                .collect(Collectors.toList());
    }

    /** One line each, {@code content/…:line: what is wrong, expected …}, in the order of files and lines. */
    public List<String> lines() {
        return found.stream()
                .sorted()
                .distinct()
                .map(m -> "content/" + m.file + ":" + m.line + ": " + m.text)
                .collect(Collectors.toList());
    }
}
