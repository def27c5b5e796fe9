package org.hearthway.testing;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.SamePerson;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.words.Words;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.annotation.EnableTransactionManagement;

/**
 * What a feature stands on, made small: a migrated database in memory, transactions, words, a clinic in New York that
 * is open on weekdays and closed on May 25, 2026, and a gate that lets everybody do everything but what is denied.
 */
@TestConfiguration(proxyBeanMethods = false)
@EnableTransactionManagement
public class LeanClinic {

    /** The zone of the clinic. */
    public static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    /** A gate with one hole: what stands in {@code denied} is refused. */
    public static class OpenGate implements Gate {

        private final Set<Action> denied = java.util.EnumSet.noneOf(Action.class);

        /** Refuses the actions from now on, and allows all others. */
        public void deny(Action... actions) {
            denied.clear();
            denied.addAll(Set.of(actions));
        }

        @Override
        public boolean allows(Viewer viewer, Action action, ChildId child) {
            return !denied.contains(action);
        }

        @Override
        public boolean allows(Viewer viewer, Action action) {
            return !denied.contains(action);
        }

        @Override
        public void require(Viewer viewer, Action action, ChildId child) {
            require(viewer, action);
        }

        @Override
        public void require(Viewer viewer, Action action) {
            if (denied.contains(action)) {
                throw new NotAvailable();
            }
        }
    }

    /** Open on weekdays, closed on one holiday. */
    static class Weekdays implements ClinicCalendar {

        private static final LocalDate HOLIDAY = LocalDate.of(2026, 5, 25);

        @Override
        public boolean isOpen(LocalDate day) {
            return day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue() && !day.equals(HOLIDAY);
        }

        @Override
        public Optional<Bilingual> holiday(LocalDate day) {
            return day.equals(HOLIDAY)
                    ? Optional.of(new Bilingual("Spring day", "Día de primavera"))
                    : Optional.empty();
        }

        @Override
        public long edition() {
            return 0;
        }

        @Override
        public LocalDate onOrAfter(LocalDate day) {
            return isOpen(day) ? day : onOrAfter(day.plusDays(1));
        }

        @Override
        public LocalDate onOrBefore(LocalDate day) {
            return isOpen(day) ? day : onOrBefore(day.minusDays(1));
        }
    }

    @Bean
    DataSource dataSource() {
        var source = new JdbcDataSource();
        source.setURL("jdbc:h2:mem:" + java.util.UUID.randomUUID()
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
        source.setUser("sa");
        return source;
    }

    @Bean
    Flyway flyway(DataSource source) {
        var flyway = Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .load();
        flyway.migrate();
        return flyway;
    }

    @Bean
    JdbcClient jdbcClient(DataSource source, Flyway migrated) {
        return JdbcClient.create(source);
    }

    @Bean
    DataSourceTransactionManager transactionManager(DataSource source) {
        return new DataSourceTransactionManager(source);
    }

    @Bean
    KnownStandings standings() {
        return new KnownStandings();
    }

    /** Two accounts are two people here. */
    @Bean
    SamePerson samePerson() {
        return AccountId::equals;
    }

    @Bean
    Words words() {
        return new Words();
    }

    @Bean
    OpenGate gate() {
        return new OpenGate();
    }

    @Bean
    ClinicCalendar calendar() {
        return new Weekdays();
    }

    @Bean
    SettableClock clock() {
        return new SettableClock(HearthwayTest.START);
    }

    @Bean
    ClinicSettings clinicSettings() {
        return new ClinicSettings(
                "Test Clinic",
                "Test Office",
                "office@clinic.example",
                NEW_YORK,
                "555-0100",
                "555-0121",
                "555-0134",
                Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY),
                LocalTime.of(8, 0),
                LocalTime.of(16, 30),
                "http://localhost:8080",
                false);
    }
}
