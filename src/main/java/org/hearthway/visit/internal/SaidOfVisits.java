package org.hearthway.visit.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits.Given;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What each person said of a visit. A later word of the same person counts; a word of the office ends all before it. */
@Repository
class SaidOfVisits {

    /** A word of somebody, or of the office when there is no person. */
    private record Word(VisitId visit, Optional<AccountId> person, Answer answer, String wish, Instant at) {}

    private final JdbcClient db;

    SaidOfVisits(JdbcClient db) {
        this.db = db;
    }

    void add(Visit visit, Optional<AccountId> person, Answer answer, String wish, Viewer by, Instant at) {
        var turn = db.sql("select coalesce(max(turn), 0) from visit_answer where visit = ?")
                .param(visit.id().value())
                .query(Long.class)
                .single();
        try {
            db.sql("insert into visit_answer (visit, turn, moves, person, answer, wish, said_by, said_at)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(
                            visit.id().value(),
                            turn + 1,
                            visit.sequence(),
                            person.map(AccountId::value).orElse(null),
                            answer.name(),
                            wish,
                            by.tag(),
                            at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
    }

    /** What stands of a visit at its present time: one word for each person, the first to speak first. */
    List<Given> standing(Visit visit) {
        return standing(List.of(visit)).getOrDefault(visit.id(), List.of());
    }

    /** The same for several visits at once; a visit of which nobody said anything is left out. */
    Map<VisitId, List<Given>> standing(List<Visit> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        var now = visits.stream().collect(Collectors.toMap(Visit::id, Visit::sequence, (one, same) -> one));
        var words = db
                .sql("select visit, moves, person, answer, wish, said_at from visit_answer"
                        + " where visit in (:visits) order by visit, turn")
                .param("visits", now.keySet().stream().map(VisitId::value).toList())
                .query((row, n) -> row.getInt("moves") == now.getOrDefault(id(row), -1)
                        ? Optional.of(word(row))
                        : Optional.<Word>empty())
                .list()
                .stream()
                .flatMap(Optional::stream)
                .collect(Collectors.groupingBy(Word::visit, LinkedHashMap::new, Collectors.toList()));
        var standing = new LinkedHashMap<VisitId, List<Given>>();
        words.forEach((visit, said) -> standing.put(visit, sinceTheOffice(said)));
        return standing;
    }

    private static VisitId id(ResultSet row) throws SQLException {
        return new VisitId(row.getObject("visit", UUID.class));
    }

    private static Word word(ResultSet row) throws SQLException {
        return new Word(
                id(row),
                Optional.ofNullable(row.getObject("person", UUID.class)).map(AccountId::new),
                Answer.valueOf(row.getString("answer")),
                row.getString("wish"),
                row.getObject("said_at", OffsetDateTime.class).toInstant());
    }

    private static List<Given> sinceTheOffice(List<Word> said) {
        var byPerson = new LinkedHashMap<AccountId, Given>();
        for (var word : said) {
            word.person()
                    .ifPresentOrElse(
                            person -> byPerson.put(person, new Given(person, word.answer(), word.wish(), word.at())),
                            byPerson::clear);
        }
        return new ArrayList<>(byPerson.values());
    }

    /** Whether people said different things. */
    static boolean differ(List<Given> said) {
        return said.stream().map(Given::answer).distinct().count() > 1;
    }
}
