package org.hearthway.shell;

import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes an unexpected failure to the log under a short reference number that the person is shown. Only the kinds of
 * the exceptions and the places in our code are written: messages may carry what a person typed.
 */
final class Trouble {

    private static final Logger LOG = LoggerFactory.getLogger(Trouble.class);
    private static final int PLACES = 12;

    private Trouble() {}

    static String note(Throwable failure) {
        var bytes = new byte[4];
        ThreadLocalRandom.current().nextBytes(bytes);
        var reference = HexFormat.of().withUpperCase().formatHex(bytes);
        var told = new StringBuilder();
        for (Throwable at = failure; at != null; at = at.getCause()) {
            told.append(' ').append(at.getClass().getName());
            var trace = at.getStackTrace();
            for (int i = 0; i < Math.min(PLACES, trace.length); i++) {
                told.append(" < ").append(trace[i]);
            }
        }
        LOG.error("reference {}:{}", reference, told);
        return reference;
    }
}
