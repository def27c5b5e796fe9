package org.hearthway.access.internal;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.hearthway.child.SamePerson;
import org.springframework.stereotype.Component;

/**
 * Tells by name and telephone whether two accounts are one human being's. It would rather ask for a third person than
 * let somebody be their own second.
 */
@Component
class OneHuman implements SamePerson {

    private static final Viewer MACHINE = new Viewer.Machine("second-person");

    private final Accounts accounts;

    OneHuman(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    public boolean areOne(AccountId first, AccountId second) {
        if (first.equals(second)) {
            return true;
        }
        var known = accounts.byId(MACHINE, Set.of(first, second));
        var one = known.get(first);
        var other = known.get(second);
        return one == null || other == null || names(one).equals(names(other)) || samePhone(one, other);
    }

    private static Set<String> names(Account account) {
        var plain = Normalizer.normalize(account.name(), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
        return Arrays.stream(plain.split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toSet());
    }

    private static boolean samePhone(Account one, Account other) {
        var digits = one.phone().replaceAll("\\D", "");
        return !digits.isEmpty() && digits.equals(other.phone().replaceAll("\\D", ""));
    }
}
