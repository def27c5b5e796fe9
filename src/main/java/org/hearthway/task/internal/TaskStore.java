package org.hearthway.task.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.TaskId;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tasks in the database. A change adds a version; of two changes to one version the second finds its place taken. */
@Repository
class TaskStore {

    /** What made a version; of an end it says whether the family ticked. */
    enum Step {
        GIVEN,
        CHANGED,
        TICKED,
        DONE,
        NOT_NEEDED,
        SET_ASIDE,
        TAKEN_BACK
    }

    private static final String LATEST = """
            select t.id, t.child, t.given_by, t.given_at, x.version, x.step, x.to_kind, x.to_account, x.to_role, x.says_en,
                   x.says_es, x.due, x.stage, x.stage_begins, x.state, x.aside_until, x.reason, x.ended_by, x.ended_at,
                   (select b.step from task_version b where b.task = t.id and b.version = 1) as first_step
            from task t join task_version x on x.task = t.id
            where not exists (select 1 from task_version n where n.task = x.task and n.version = x.version + 1)
            """;

    private static final String OPEN = " and x.state in ('OPEN', 'ASIDE')";

    private final JdbcClient db;

    TaskStore(JdbcClient db) {
        this.db = db;
    }

    void insert(Task task, Step step, Viewer by) {
        db.sql("insert into task (id, child, given_by, given_at) values (?, ?, ?, ?)")
                .params(task.id().value(), task.child().value(), task.givenBy().value(), utc(task.givenAt()))
                .update();
        insertVersion(task, step, by, task.givenAt());
    }

    /**
     * Adds a version.
     *
     * @throws Overtaken when that version exists already
     */
    void insertVersion(Task task, Step step, Viewer by, Instant at) {
        try {
            db.sql("""
                    insert into task_version (task, version, step, to_kind, to_account, to_role, says_en, says_es, due, stage,
                      stage_begins, state, aside_until, reason, ended_by, ended_at, changed_by, changed_at)
                    values (:task, :version, :step, :kind, :account, :role, :en, :es, :due, :stage, :begins, :state, :until, :reason,
                      :endedBy, :endedAt, :by, :at)
                    """)
                    .param("task", task.id().value())
                    .param("version", task.version())
                    .param("step", step.name())
                    .param("kind", kind(task.to()))
                    .param("account", account(task.to()))
                    .param(
                            "role",
                            task.to() instanceof Assignee.AnyOf any ? any.role().name() : null)
                    .param("en", task.says().en())
                    .param("es", task.says().es())
                    .param("due", task.due())
                    .param("stage", task.stage().orElse(null))
                    .param("begins", task.of().flatMap(Task.OfStage::begins).orElse(null))
                    .param("state", state(task))
                    .param("until", task.aside().map(Task.Aside::until).orElse(null))
                    .param("reason", reason(task))
                    .param("endedBy", task.end().map(end -> end.by().value()).orElse(null))
                    .param("endedAt", task.end().map(end -> utc(end.at())).orElse(null))
                    .param("by", by.tag())
                    .param("at", utc(at))
                    .update();
        } catch (DuplicateKeyException taken) {
            // the exception's text carries values; it ends here
            throw new Overtaken();
        }
    }

    private static String kind(Assignee to) {
        if (to instanceof Assignee.Person) {
            return "PERSON";
        }
        if (to instanceof Assignee.AnyOf) {
            return "ROLE";
        }
        return to instanceof Assignee.Family ? "FAMILY" : "CAREGIVER";
    }

    private static @Nullable UUID account(Assignee to) {
        if (to instanceof Assignee.Person person) {
            return person.account().value();
        }
        return to instanceof Assignee.Caregiver caregiver ? caregiver.account().value() : null;
    }

    private static String state(Task task) {
        return task.end()
                .map(end -> end.outcome().name())
                .orElseGet(() -> task.aside().isPresent() ? "ASIDE" : "OPEN");
    }

    private static String reason(Task task) {
        return task.end()
                .map(Task.End::reason)
                .orElseGet(() -> task.aside().map(Task.Aside::reason).orElse(""));
    }

    Optional<Task> find(TaskId id) {
        return db.sql(LATEST + " and t.id = ?")
                .param(id.value())
                .query(TaskStore::task)
                .optional();
    }

    List<Task> ofChild(ChildId child) {
        return db.sql(LATEST + " and t.child = ?")
                .param(child.value())
                .query(TaskStore::task)
                .list();
    }

    /** Of all children, those that have not ended. */
    List<Task> open() {
        return db.sql(LATEST + OPEN).query(TaskStore::task).list();
    }

    private static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Task task(ResultSet row, int number) throws SQLException {
        var state = row.getString("state");
        var reason = row.getString("reason");
        return new Task(
                new TaskId(row.getObject("id", UUID.class)),
                new ChildId(row.getObject("child", UUID.class)),
                to(row),
                new Task.Says(row.getString("says_en"), row.getString("says_es")),
                row.getObject("due", LocalDate.class),
                stage(row),
                new AccountId(row.getObject("given_by", UUID.class)),
                row.getObject("given_at", OffsetDateTime.class).toInstant(),
                state.equals("ASIDE")
                        ? Optional.of(new Task.Aside(row.getObject("aside_until", LocalDate.class), reason))
                        : Optional.empty(),
                end(row, state, reason),
                row.getLong("version"));
    }

    /** Whether it is on the plan stands elsewhere. */
    private static Optional<Task.OfStage> stage(ResultSet row) throws SQLException {
        var name = row.getString("stage");
        if (name == null) {
            return Optional.empty();
        }
        return Optional.of(new Task.OfStage(
                name,
                Optional.ofNullable(row.getObject("stage_begins", LocalDate.class)),
                Step.valueOf(row.getString("first_step")) == Step.TICKED,
                true));
    }

    private static Assignee to(ResultSet row) throws SQLException {
        return switch (row.getString("to_kind")) {
            case "PERSON" -> new Assignee.Person(new AccountId(row.getObject("to_account", UUID.class)));
            case "ROLE" -> new Assignee.AnyOf(Role.valueOf(row.getString("to_role")));
            case "FAMILY" -> new Assignee.Family();
            default -> new Assignee.Caregiver(new AccountId(row.getObject("to_account", UUID.class)));
        };
    }

    private static Optional<Task.End> end(ResultSet row, String state, String reason) throws SQLException {
        var at = row.getObject("ended_at", OffsetDateTime.class);
        if (at == null) {
            return Optional.empty();
        }
        return Optional.of(new Task.End(
                Task.Outcome.valueOf(state),
                new AccountId(row.getObject("ended_by", UUID.class)),
                at.toInstant(),
                reason,
                Step.valueOf(row.getString("step")) == Step.TICKED));
    }
}
