package org.hearthway.access.ui;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;

/** Puts names in the place of identifiers, for somebody who may know them. */
final class People {

    private static final String PERSON = "person";
    private static final Pattern ACCOUNT = Pattern.compile("account ([0-9a-f-]{36})");

    private final Accounts accounts;

    People(Accounts accounts) {
        this.accounts = accounts;
    }

    /** The name behind a tag of the trail; the tag itself where there is none. */
    String name(Viewer viewer, String tag) {
        var cut = tag.indexOf(':');
        if (cut < 0 || !tag.substring(0, cut).equals(PERSON)) {
            return tag;
        }
        return AccountId.parse(tag.substring(cut + 1))
                .flatMap(id ->
                        accounts.byId(viewer, List.of(id)).values().stream().findFirst())
                .map(Account::name)
                .orElse(tag);
    }

    /** The same for accounts named within a line of the trail. */
    String named(Viewer viewer, String what) {
        return ACCOUNT.matcher(what)
                .replaceAll(found -> java.util.regex.Matcher.quoteReplacement(
                        name(viewer, PERSON + ":" + UUID.fromString(found.group(1)))));
    }
}
