package org.hearthway.content;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Tells broken content at the start as plain lines instead of a stack trace. */
class ContentBrokenAnalyzer extends AbstractFailureAnalyzer<ContentBroken> {

    @Override
    protected FailureAnalysis analyze(Throwable root, ContentBroken broken) {
        return new FailureAnalysis(
                "The content has " + broken.lines().size() + " mistake(s):" + System.lineSeparator()
                        + String.join(System.lineSeparator(), broken.lines()),
                "Mend the lines named above and start again. Nothing was changed.",
                broken);
    }
}
