package org.hearthway.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.UUID;
import org.hearthway.access.Links.Purpose;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.SettableClock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;

@HearthwayTest
class LinksTests {

    @Autowired
    private Links links;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient jdbc;

    private final UUID subject = UUID.randomUUID();

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    private Links.Link link(Purpose purpose) {
        return links.create(purpose, subject, clock.instant().plus(Duration.ofHours(1)));
    }

    @Test
    void opensForItsPurposeAsOftenAsAsked() {
        var link = link(Purpose.ANSWER_VISIT);
        var token = links.token(link.id());

        assertThat(links.open(Purpose.ANSWER_VISIT, token)).contains(link);
        assertThat(links.open(Purpose.ANSWER_VISIT, token)).contains(link);
        assertThat(links.open(Purpose.SET_PASSWORD, token)).isEmpty();
    }

    /** AU6. */
    @Test
    void isDeadOnceUsedAndIsUsedOnce() {
        var link = link(Purpose.SET_PASSWORD);

        assertThat(links.use(link.id())).isTrue();
        assertThat(links.use(link.id())).isFalse();
        assertThat(links.open(Purpose.SET_PASSWORD, links.token(link.id()))).isEmpty();
    }

    @Test
    void isDeadAtItsEndUnlessTheEndMoves() {
        var link = link(Purpose.ANSWER_VISIT);
        clock.advance(Duration.ofHours(1));
        assertThat(links.open(Purpose.ANSWER_VISIT, links.token(link.id()))).isEmpty();
        assertThat(links.use(link.id())).isFalse();

        links.extend(link.id(), clock.instant().plus(Duration.ofHours(1)));

        assertThat(links.open(Purpose.ANSWER_VISIT, links.token(link.id()))).isPresent();
    }

    @Test
    void dieTogetherWhenRevoked() {
        var first = link(Purpose.SET_PASSWORD);
        var second = link(Purpose.SET_PASSWORD);

        links.revoke(Purpose.SET_PASSWORD, subject);

        assertThat(links.open(Purpose.SET_PASSWORD, links.token(first.id()))).isEmpty();
        assertThat(links.open(Purpose.SET_PASSWORD, links.token(second.id()))).isEmpty();
    }

    @Test
    void doNotOpenWithATokenThatIsCutOrChanged() {
        var token = links.token(link(Purpose.ANSWER_VISIT).id());
        var changed = (token.charAt(30) == 'A' ? 'B' : 'A');

        assertThat(links.open(Purpose.ANSWER_VISIT, token.substring(1))).isEmpty();
        assertThat(links.open(Purpose.ANSWER_VISIT, token.substring(0, 30) + changed + token.substring(31)))
                .isEmpty();
        assertThat(links.open(Purpose.ANSWER_VISIT, "")).isEmpty();
        assertThat(links.open(Purpose.ANSWER_VISIT, "../../etc")).isEmpty();
    }

    /** AU6. */
    @Test
    void leaveNoUsableTokenInTheTable() {
        var link = link(Purpose.SET_PASSWORD);
        var token = links.token(link.id());

        var row = jdbc.sql("select * from access_link where id = :id")
                .param("id", link.id())
                .query()
                .singleRow();

        assertThat(row.toString()).doesNotContain(token).doesNotContain(token.substring(22));
        assertThat(links.open(Purpose.SET_PASSWORD, link.id().toString())).isEmpty();
    }

    @Test
    void keepTheirKeyInAFileThatOnlyItsOwnerReads(@Value("${hearthway.data}") Path data) throws Exception {
        var key = data.resolve("links.key");

        assertThat(Files.size(key)).isEqualTo(32);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
                .isEqualTo("rw-------");
    }
}
