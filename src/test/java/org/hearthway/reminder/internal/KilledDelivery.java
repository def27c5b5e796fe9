package org.hearthway.reminder.internal;

import jakarta.mail.internet.MimeMessage;
import java.lang.reflect.Proxy;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.testing.KnownStandings;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.transaction.support.TransactionTemplate;
import org.thymeleaf.ITemplateEngine;

/**
 * A process to be killed: the outbox of the program with its database file and a mail server, and nothing else. Writes
 * {@code kept <name>} when a message is safe in the database and {@code sending} when it is about to be handed over.
 */
final class KilledDelivery {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final int IN_ONE_ROUND = 3;

    private final JdbcClient db;
    private final OutboxRows rows;
    private final Delivery delivery;
    private final TransactionTemplate inTransaction;
    private final Clock clock;
    private final AccountId person = new AccountId(new UUID(7, 7));

    private KilledDelivery(String database, int port, Duration ahead) {
        var source = new SingleConnectionDataSource(database, "sa", "", true);
        this.db = JdbcClient.create(source);
        var known = new KnownFamily();
        known.accounts.put(
                person,
                new Account(
                        person,
                        "Pat Example",
                        "pat@family.example",
                        "",
                        Set.of(Role.CAREGIVER),
                        Language.EN,
                        NEW_YORK,
                        Account.State.ACTIVE));
        var sender = new JavaMailSenderImpl();
        sender.setHost("127.0.0.1");
        sender.setPort(port);
        this.clock = Clock.offset(Clock.systemUTC(), ahead);
        this.inTransaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        this.rows = new OutboxRows(db);
        this.delivery = new Delivery(
                new DeliveryQueue(db),
                composer(),
                telling(new SmtpPostman(sender)),
                new Family(known.households(), known.accounts()),
                new KnownStandings(),
                new SendingRules(),
                inTransaction,
                event -> {},
                clock);
    }

    /** Says before each message that it is being handed over, so that a kill can hit that moment. */
    private static Postman telling(Postman postman) {
        return new Postman() {
            @Override
            public void deliver(MimeMessage message) throws NotTaken {
                say("sending");
                postman.deliver(message);
            }

            @Override
            public boolean sends() {
                return postman.sends();
            }
        };
    }

    /** With a page that needs no templates: their loading is most of a start, and nothing here looks at it. */
    static MailComposer composer() {
        var page = (ITemplateEngine) Proxy.newProxyInstance(
                KilledDelivery.class.getClassLoader(),
                new Class<?>[] {ITemplateEngine.class},
                (proxy, method, arguments) -> "<p>Hello</p>");
        return new MailComposer(clinic(), new KnownFamily().links(), page);
    }

    private static ClinicSettings clinic() {
        return new ClinicSettings(
                "Clinic",
                "Office",
                "office@clinic.example",
                NEW_YORK,
                "555-0100",
                "555-0121",
                "555-0134",
                Set.of(),
                LocalTime.of(8, 0),
                LocalTime.of(16, 0),
                "http://localhost:8080",
                false);
    }

    /**
     * Runs until it is killed; with {@code drain} as third argument until nothing is left to send. The fourth says how
     * far its clock is ahead of the machine's.
     */
    public static void main(String[] args) {
        var process = new KilledDelivery(args[0], Integer.parseInt(args[1]), Duration.parse(args[3]));
        process.delivery.takeBackAll();
        if (args[2].equals("drain")) {
            while (process.delivery.round() > 0) {
                continue;
            }
            say("drained");
            return;
        }
        while (true) {
            for (int i = 0; i < IN_ONE_ROUND; i++) {
                process.keepOne();
            }
            process.delivery.round();
        }
    }

    private void keepOne() {
        var name = "kept/" + UUID.randomUUID();
        inTransaction.executeWithoutResult(status -> {
            var child = ChildId.random();
            // nothing leaves for a child that is not there
            db.sql("insert into child (id, version, entered_at) values (?, 1, ?)")
                    .params(child.value(), OutboxRows.utc(clock.instant()))
                    .update();
            rows.insert(draft(name, child), Optional.empty(), clock.instant());
        });
        say("kept " + name);
    }

    private Draft draft(String name, ChildId child) {
        return new Draft(
                name,
                name,
                child,
                person,
                Optional.empty(),
                Channel.MAIL,
                Language.EN,
                NEW_YORK,
                "therapy",
                "visit-please-answer",
                LocalDateTime.parse("2026-03-17T10:30"),
                NEW_YORK,
                false,
                "Visit",
                "Hello",
                clock.instant(),
                Optional.empty());
    }

    private static void say(String line) {
        System.out.println(line);
        System.out.flush();
    }
}
