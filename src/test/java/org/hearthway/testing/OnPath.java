package org.hearthway.testing;

import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Plan;

/**
 * A child and its paths, for tests: a physician decides, each time from what stands.
 *
 * @param plans the clinic's plans
 * @param child whose
 */
public record OnPath(Plans plans, ChildId child) {

    /** The one who decides. */
    public static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);

    /** Accepts the words of some paths, so that families may read them; it holds for the tests after this one, too. */
    public static void accept(SignOff signOff, Plans plans, String... paths) {
        var some = List.of(paths);
        signOff.accept(
                People.with(Role.ADMINISTRATOR),
                plans.pathways().stream()
                        .filter(path -> some.contains(path.id()))
                        .map(path -> new SignOff.Item("paths", path.id(), path.version()))
                        .toList());
    }

    /** Begins a path at its first stage. */
    public void begin(String path, Beginning how, LocalDate day) {
        plans.begin(PHYSICIAN, child, path, how, day, "as agreed");
    }

    /** Makes a change to a path. */
    public void decide(String path, Change change) {
        plans.apply(PHYSICIAN, child, path, change, "as agreed", version());
    }

    /** The version of all that was decided; 0 while nothing was. */
    public long version() {
        return plans.decisions(PHYSICIAN, child).stream()
                .mapToLong(Plans.Decision::version)
                .max()
                .orElse(0);
    }

    /** The plan on a path that the child is on. */
    public Plan plan(String path) {
        return all().stream()
                .filter(plan -> plan.template().id().equals(path))
                .findFirst()
                .orElseThrow();
    }

    /** All plans of the child. */
    public List<Plan> all() {
        return plans.plans(PHYSICIAN, child).stream().map(Plans.ChildPlan::plan).toList();
    }
}
