package org.hearthway.clinic.internal;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in one clear text that the database belongs to the other kind of clinic. */
class WrongDatabaseAnalyzer extends AbstractFailureAnalyzer<WrongDatabase> {

    @Override
    protected FailureAnalysis analyze(Throwable root, WrongDatabase wrong) {
        var belongs = wrong.marked().equals("demo") ? "the demo clinic" : "a real clinic";
        var started = wrong.started().equals("demo") ? "the demo clinic" : "a real clinic";
        return new FailureAnalysis(
                "This database belongs to " + belongs + ", and Hearthway was started as " + started
                        + ". Invented and real children must never meet, so it did not start. Nothing was changed.",
                "Name another database in spring.datasource.url, or start with the profile that it belongs to ("
                        + wrong.marked() + ").",
                wrong);
    }
}
