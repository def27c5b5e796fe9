package org.hearthway.clinic.internal;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Names every missing or wrong clinic setting at the start, instead of a stack trace. */
class SettingsBrokenAnalyzer extends AbstractFailureAnalyzer<SettingsBroken> {

    @Override
    protected FailureAnalysis analyze(Throwable root, SettingsBroken broken) {
        return new FailureAnalysis(
                "A clinic cannot start without these settings:" + System.lineSeparator()
                        + String.join(System.lineSeparator(), broken.lines()),
                "Set them in application-clinic.properties beside the program, as --name=value, or in the environment "
                        + "(HEARTHWAY_CLINIC_NAME and so on), and start again.",
                broken);
    }
}
