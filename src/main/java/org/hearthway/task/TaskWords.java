package org.hearthway.task;

import java.util.List;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says for whom a task is, in the words of the team. */
@Component
public class TaskWords {

    private final Words words;
    private final Accounts accounts;

    TaskWords(Words words, Accounts accounts) {
        this.words = words;
        this.accounts = accounts;
    }

    /** "The family", "Any nurse", or a name. */
    public String to(Viewer.Person viewer, Assignee to) {
        if (to instanceof Assignee.Person person) {
            return name(viewer, person.account());
        }
        if (to instanceof Assignee.Caregiver caregiver) {
            return words.say(viewer.language(), "task.to.caregiver", name(viewer, caregiver.account()));
        }
        return to instanceof Assignee.AnyOf any
                ? any(viewer, any.role())
                : words.say(viewer.language(), "task.to.family");
    }

    /** "Any nurse". */
    public String any(Viewer.Person viewer, Role role) {
        return words.say(viewer.language(), "task.to.any." + role);
    }

    /** What a person is called; empty for one who is gone. */
    public String name(Viewer.Person viewer, AccountId account) {
        return Optional.ofNullable(accounts.byId(viewer, List.of(account)).get(account))
                .map(Account::name)
                .orElse("");
    }
}
