package org.hearthway.child.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.GoesOn;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.Households;
import org.hearthway.child.Merges.Both;
import org.hearthway.child.Standings;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What must agree before two entries may become one, so that neither a dose nor a right changes on the way. */
@Component
class MergeChecks {

    private final JdbcClient jdbc;
    private final Standings standings;
    private final Households households;
    private final HoldingMover mover;

    MergeChecks(JdbcClient jdbc, Standings standings, Households households, HoldingMover mover) {
        this.jdbc = jdbc;
        this.standings = standings;
        this.households = households;
        this.mover = mover;
    }

    List<Problem> hindrances(Viewer viewer, Child stays, Child folds, List<Both> caregivers, List<Holding> holdings) {
        var problems = new ArrayList<Problem>();
        if (stays.id().equals(folds.id())) {
            return List.of(Problem.at("", "child.problem.merge.same"));
        }
        if (!stays.data().birthDate().equals(folds.data().birthDate())) {
            problems.add(Problem.at(
                    "",
                    "child.problem.merge.birth-date",
                    stays.data().birthDate(),
                    folds.data().birthDate()));
        }
        var here = standings.now(viewer, stays.id());
        var there = standings.now(viewer, folds.id());
        if (here.status() != there.status() || here.waitsForSecondPerson() || there.waitsForSecondPerson()) {
            problems.add(Problem.at("", "child.problem.merge.status"));
        }
        if (caregivers.stream().anyMatch(MergeChecks::differs)) {
            problems.add(Problem.at("", "child.problem.merge.reach"));
        }
        if (caregivers.stream().anyMatch(both -> keptApart(both.account(), stays, folds))) {
            problems.add(Problem.at("", "child.problem.merge.apart"));
        }
        var pair = new HoldingMover.Pair(stays.id(), folds.id());
        holdings.stream()
                .filter(Chain.class::isInstance)
                .map(Chain.class::cast)
                .filter(chain -> chain.goesOn() == GoesOn.THE_NEWER && mover.isOlderInTheOneThatStays(chain, pair))
                .map(chain -> Problem.at("", "child.problem.merge.newer." + chain.name()))
                .forEach(problems::add);
        return problems;
    }

    private static boolean differs(Both both) {
        return both.inTheOneThatStays().isPresent()
                && both.inTheOneThatFolds().isPresent()
                && !both.inTheOneThatStays().equals(both.inTheOneThatFolds());
    }

    /** Somebody to be kept apart in one entry and not in the other, although both have a home of that person. */
    private boolean keptApart(AccountId account, Child stays, Child folds) {
        var said = jdbc.sql("""
                        select h.child, h.kept_apart from caregiver_home h
                        where h.account = :account and h.child in (:stays, :folds)
                          and h.number = (select max(n.number) from caregiver_home n
                                          where n.child = h.child and n.account = h.account)
                        """)
                .param("account", account.value())
                .param("stays", stays.id().value())
                .param("folds", folds.id().value())
                .query((row, n) -> row.getBoolean("kept_apart"))
                .list();
        return said.size() == 2 && !Objects.equals(said.get(0), said.get(1));
    }

    /** Everybody who cares for either. */
    List<Both> caregivers(Child stays, Child folds) {
        return jdbc
                .sql("select distinct account from caregiver_reach where child in (:stays, :folds) order by account")
                .param("stays", stays.id().value())
                .param("folds", folds.id().value())
                .query(UUID.class)
                .list()
                .stream()
                .map(AccountId::new)
                .map(account ->
                        new Both(account, households.reach(account, stays.id()), households.reach(account, folds.id())))
                .filter(both -> both.inTheOneThatStays().isPresent()
                        || both.inTheOneThatFolds().isPresent())
                .toList();
    }
}
