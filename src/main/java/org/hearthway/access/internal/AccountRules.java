package org.hearthway.access.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Problem;

/** What may be entered about a person. */
final class AccountRules {

    static final int NAME = 120;
    static final int EMAIL = 254;
    static final int PHONE = 40;

    /** Loose on purpose: the mail that arrives is the proof. Nothing that could end a header line. */
    private static final Pattern MAIL = Pattern.compile("[^\\s@<>,;:\"\\p{Cntrl}]+@[^\\s@<>,;:\"\\p{Cntrl}]+");

    private static final Pattern NUMBER = Pattern.compile("\\+?[0-9][0-9 ().-]*");

    private AccountRules() {}

    static List<Problem> check(NewAccount data) {
        var problems = new ArrayList<Problem>();
        var name = data.name().strip();
        if (name.isEmpty() || name.length() > NAME || name.chars().anyMatch(Character::isISOControl)) {
            problems.add(Problem.at("name", "access.problem.name", NAME));
        }
        var email = data.email().strip();
        if (email.length() > EMAIL || !MAIL.matcher(email).matches()) {
            problems.add(Problem.at("email", "access.problem.email", EMAIL));
        }
        var phone = data.phone().strip();
        if (!phone.isEmpty()
                && (phone.length() > PHONE || !NUMBER.matcher(phone).matches())) {
            problems.add(Problem.at("phone", "access.problem.phone", PHONE));
        }
        if (data.roles().isEmpty()) {
            problems.add(Problem.at("roles", "access.problem.roles"));
        }
        return problems;
    }
}
