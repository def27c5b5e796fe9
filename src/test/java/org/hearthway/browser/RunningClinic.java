package org.hearthway.browser;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import org.hearthway.HearthwayApplication;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.SettableClock;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;

/**
 * The whole program on a port of its own, on an empty database in memory, with a clock that the test moves and a mail
 * server that keeps what it is given. It begins at {@link HearthwayTest#START}.
 */
public final class RunningClinic implements AutoCloseable {

    /** Walks through the shared clinic take turns. */
    public static final String SHARED = "the shared clinic";

    private static final String DATABASE = "spring.datasource.url=";

    private static @Nullable RunningClinic shared;

    /**
     * Starting and ending a clinic sets the one log of the virtual machine up afresh: one at a time, and none while a
     * walk keeps its log.
     */
    private static final ReentrantLock LOG = new ReentrantLock();

    private final SettableClock clock;
    private final GreenMail mail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private final ConfigurableApplicationContext context;
    private final String url;

    private RunningClinic(String profile, Instant start, List<String> settings) {
        clock = new SettableClock(start);
        mail.start();
        var port = freePort();
        url = "http://localhost:" + port;
        var name = profile + UUID.randomUUID();
        var all = new ArrayList<>(List.of(
                "server.port=" + port,
                DATABASE + "jdbc:h2:mem:" + name
                        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;OPTIMIZE_REUSE_RESULTS=0;DB_CLOSE_DELAY=-1",
                "spring.main.allow-bean-definition-overriding=true",
                "spring.mail.host=127.0.0.1",
                "spring.mail.port=" + mail.getSmtp().getPort(),
                "hearthway.data=target/browser-data/" + name,
                "hearthway.clinic.base-url=" + url));
        if (settings.stream().anyMatch(setting -> setting.startsWith(DATABASE))) {
            all.removeIf(setting -> setting.startsWith(DATABASE));
        }
        all.addAll(settings);
        LOG.lock();
        try {
            context = started(profile, all);
        } finally {
            LOG.unlock();
        }
    }

    /** Holds the log of the virtual machine for this walk alone, until it is closed by the same thread. */
    static Held holdTheLog() {
        // those that share a clinic shall not have to wait for theirs
        shared();
        LOG.lock();
        return LOG::unlock;
    }

    /** Something that is let go again. */
    interface Held extends AutoCloseable {
        @Override
        void close();
    }

    private ConfigurableApplicationContext started(String profile, List<String> all) {
        return new SpringApplicationBuilder(HearthwayApplication.class)
                .profiles(profile)
                .initializers(empty -> {
                    var beans = (GenericApplicationContext) empty;
                    beans.getBeanFactory().registerSingleton("onlyTheProgram", new OnlyTheProgram());
                    // in place of the program's own bean of that name, which then steps back
                    beans.setAllowBeanDefinitionOverriding(true);
                    beans.registerBean("clock", SettableClock.class, () -> clock);
                })
                .run(all.stream().map(setting -> "--" + setting).toArray(String[]::new));
    }

    /** The demo clinic; more settings as {@code name=value}. */
    public static RunningClinic demo(String... settings) {
        return new RunningClinic("demo", HearthwayTest.START, List.of(settings));
    }

    /**
     * One demo clinic for all walks that leave it as it was, or change nothing but a child of their own; it ends with
     * the program that runs the tests.
     */
    public static synchronized RunningClinic shared() {
        if (shared == null) {
            shared = demo();
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
        }
        return shared;
    }

    /** The demo clinic as it is laid out at a moment. */
    public static RunningClinic demoAt(Instant start) {
        return new RunningClinic("demo", start, List.of());
    }

    /** The demo clinic on a database on disk that writes every commit through, as the shipped settings do. */
    static RunningClinic demoOnDisk() {
        return demo(
                DATABASE + "jdbc:h2:file:./target/browser-data/" + UUID.randomUUID()
                        + "/hearthway;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;OPTIMIZE_REUSE_RESULTS=0;WRITE_DELAY=0;QUERY_CACHE_SIZE=128;LOCK_TIMEOUT=60000");
    }

    /** A real clinic on an empty database; more settings as {@code name=value}. */
    public static RunningClinic real(String... settings) {
        var all = new ArrayList<>(List.of(
                "hearthway.clinic.name=Fernhollow Clinic",
                "hearthway.clinic.sender-name=Fernhollow Office",
                "hearthway.clinic.sender-address=office@fernhollow.example",
                "hearthway.clinic.zone=America/New_York",
                "hearthway.clinic.emergency-number=555-0100",
                "hearthway.clinic.urgent-line=555-0121",
                "hearthway.clinic.office-line=555-0134",
                "hearthway.clinic.office-days=monday,tuesday,wednesday,thursday,friday",
                "hearthway.clinic.office-opens=08:00",
                "hearthway.clinic.office-closes=16:30"));
        all.addAll(List.of(settings));
        return new RunningClinic("clinic", HearthwayTest.START, all);
    }

    private static int freePort() {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where it answers, without a slash at the end. */
    public String url() {
        return url;
    }

    /** The one clock of the program. */
    public SettableClock clock() {
        return clock;
    }

    /** The mail server it sends through. */
    public GreenMail mail() {
        return mail;
    }

    /** A part of the program, to look behind the screens. */
    public <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    /** All parts of a kind. */
    public <T> List<T> parts(Class<T> type) {
        return List.copyOf(context.getBeansOfType(type).values());
    }

    @Override
    public void close() {
        LOG.lock();
        try {
            context.close();
        } finally {
            LOG.unlock();
        }
        mail.stop();
    }
}
