package org.hearthway.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A hundred and more texts that a careless sink would take for something else: markup, script, header lines, quotes,
 * directional marks. Null bytes are left out: no database of ours takes them. Written by hand for this project.
 */
public final class HostileStrings {

    private static final List<String> CORES = List.of(
            "<script>document.title='taken'</script>",
            "<img src=x onerror=\"document.title='taken'\">",
            "<svg onload=\"document.title='taken'\"></svg>",
            "<a href=\"javascript:document.title='taken'\">x</a>",
            "<iframe srcdoc=\"<script>parent.document.title='taken'</script>\"></iframe>",
            "</textarea><script>document.title='taken'</script>",
            "</title><script>document.title='taken'</script>",
            "\"><script>document.title='taken'</script>",
            "' onmouseover='document.title=1",
            "{{7*7}}",
            "${7*7}",
            "#{7*7}",
            "[[${7*7}]]",
            "*{T(java.lang.Runtime)}",
            "th:utext",
            "a\r\nBcc: all@clinic.example",
            "a\nSubject: other",
            "a\r\n\r\n<html>",
            "BEGIN:VEVENT\r\nEND:VEVENT",
            "=1+1",
            "@SUM(A1)",
            "'; drop table child; --",
            "\" or \"1\"=\"1",
            "%s%n%d",
            "{0} {1,date}",
            "\u202egnp.exe",
            "\u2066mirror\u2069",
            "tab\tand bell\u0007",
            "&lt;b&gt;&amp;",
            "<!-- <b>",
            "]]><x>",
            "\\u003cscript\\u003e",
            "e\u0301e\u0301e\u0301",
            "👩‍👧‍👦 and 😀");

    private HostileStrings() {}

    /** All of them: each alone, in the middle of a sentence, and doubled. */
    public static Stream<String> all() {
        var all = new ArrayList<String>();
        for (var core : CORES) {
            all.add(core);
            all.add("He said " + core + " and slept.");
            all.add(core + core);
        }
        return all.stream();
    }
}
