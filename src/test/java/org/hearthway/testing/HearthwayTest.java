package org.hearthway.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.Instant;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.test.context.ActiveProfiles;

/**
 * A test over the whole program as a real clinic, without a web server, on an empty database in memory, at
 * Thursday, March 12, 2026, 14:00 UTC (10:00 in New York), with a clock that the test moves. All such tests share one
 * context and one database: make children and accounts of your own, and assume nobody else's.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.MOCK,
        properties = {
            "spring.datasource.url=jdbc:h2:mem:tests;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;OPTIMIZE_REUSE_RESULTS=0;DB_CLOSE_DELAY=-1",
            "hearthway.data=${hearthway.tests:target/tests}",
            "hearthway.clinic.name=Test Clinic",
            "hearthway.clinic.sender-name=Test Office",
            "hearthway.clinic.sender-address=office@clinic.example",
            "hearthway.clinic.zone=America/New_York",
            "hearthway.clinic.emergency-number=555-0100",
            "hearthway.clinic.urgent-line=555-0121",
            "hearthway.clinic.office-line=555-0134",
            "hearthway.clinic.office-days=monday,tuesday,wednesday,thursday,friday",
            "hearthway.clinic.office-opens=08:00",
            "hearthway.clinic.office-closes=16:30",
            "hearthway.clinic.base-url=http://localhost:8080"
        })
@ActiveProfiles("clinic")
@Import(HearthwayTest.Time.class)
@ExtendWith(FromTheStart.class)
public @interface HearthwayTest {

    /** The moment at which every test begins unless it moves the clock. */
    Instant START = Instant.parse("2026-03-12T14:00:00Z");

    @TestConfiguration(proxyBeanMethods = false)
    class Time {
        @Bean
        @Primary
        SettableClock settableClock() {
            return new SettableClock(START);
        }
    }
}
