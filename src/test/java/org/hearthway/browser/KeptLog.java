package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.slf4j.LoggerFactory;

/**
 * LG1: every line that a walk logs, at DEBUG for the program itself, the framework and what speaks to the database, so
 * that afterwards nothing that was typed or handed out is found in it.
 */
final class KeptLog extends AppenderBase<ILoggingEvent> implements AutoCloseable {

    /** Settings of the clinic whose log is kept: all lines are written, none to the console. */
    static final String[] AT_DEBUG = {
        "logging.level.org.hearthway=debug",
        "logging.level.org.springframework=debug",
        "logging.level.com.zaxxer.hikari=debug",
        "logging.level.org.flywaydb=debug",
        "logging.level.org.eclipse.angus=debug",
        "logging.threshold.console=off"
    };

    private static final int FEW = 100;

    private final Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    private final List<String> lines = new CopyOnWriteArrayList<>();

    /** Begins to keep; the clinic has started. */
    KeptLog() {
        setContext(root.getLoggerContext());
        start();
        root.addAppender(this);
    }

    @Override
    protected void append(ILoggingEvent event) {
        if (event.getLoggerName().startsWith("com.icegreen.")) {
            // the mail server of the test, which is no part of the program
            return;
        }
        var thrown = event.getThrowableProxy();
        lines.add(event.getLoggerName() + " " + event.getFormattedMessage()
                + (thrown == null ? "" : ThrowableProxyUtil.asString(thrown)));
    }

    /** Fails when a line holds one of the marks. */
    void tellsNothingOf(String... marks) {
        assertThat(lines).as("lines of the log").hasSizeGreaterThan(FEW);
        assertThat(lines.stream().filter(line -> Stream.of(marks).anyMatch(line::contains)))
                .as("lines of the log that hold what nobody may read there")
                .isEmpty();
    }

    @Override
    public void close() {
        root.detachAppender(this);
    }
}
