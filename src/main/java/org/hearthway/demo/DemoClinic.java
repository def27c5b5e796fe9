package org.hearthway.demo;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.access.Passwords;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.ClinicValues;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Lays the demo clinic out in an empty database, before the first request and in one transaction: it is there whole
 * or not at all. Everything is written through the services that people use, by the people who would.
 */
@Component
@DemoProfile
class DemoClinic implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(DemoClinic.class);
    private static final Viewer MACHINE = new Viewer.Machine("demo");
    private static final Duration ON_CALL_SINCE = Duration.ofDays(90);

    private final People people;
    private final Stories stories;
    private final HouseValues house;
    private final ClinicValues values;
    private final ClinicCalendar calendar;
    private final Accounts accounts;
    private final Passwords passwords;
    private final OnCall onCall;
    private final ChildhoodFactory childhoods;
    private final ClinicSettings clinic;
    private final DemoClock clock;
    private final TransactionTemplate transaction;
    private boolean running;

    DemoClinic(
            People people,
            Stories stories,
            HouseValues house,
            ClinicValues values,
            ClinicCalendar calendar,
            Accounts accounts,
            Passwords passwords,
            OnCall onCall,
            ChildhoodFactory childhoods,
            ClinicSettings clinic,
            DemoClock clock,
            TransactionTemplate transaction) {
        this.people = people;
        this.stories = stories;
        this.house = house;
        this.values = values;
        this.calendar = calendar;
        this.accounts = accounts;
        this.passwords = passwords;
        this.onCall = onCall;
        this.childhoods = childhoods;
        this.clinic = clinic;
        this.clock = clock;
        this.transaction = transaction;
    }

    /** Early: the server takes requests in one of the last phases. */
    @Override
    public int getPhase() {
        return 0;
    }

    @Override
    public void start() {
        transaction.executeWithoutResult(status -> {
            if (accounts.all(MACHINE).isEmpty()) {
                layOut();
            }
        });
        running = true;
    }

    private void layOut() {
        var persons = invite();
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        var acts = new Acts();
        acts.at(clock.instant().minus(ON_CALL_SINCE), () -> nameWhoIsOnCall(persons));
        house.addTo(acts, new DemoDays(today, calendar, clinic.zone()), values, persons);
        stories.all()
                .forEach(story ->
                        childhoods.of(story, persons, today, clock.instant()).addTo(acts));
        acts.liveThrough(clock);
        LOG.info(
                "The demo clinic is laid out: {} people, {} children",
                persons.size(),
                stories.all().size());
    }

    private void nameWhoIsOnCall(Map<String, Viewer.Person> persons) {
        var duty = people.duty();
        onCall.say(
                known(persons, "administrator"),
                new OnCall.Order(
                        duty.minutes(),
                        accounts(persons, duty.office()),
                        accounts(persons, duty.outside()),
                        Optional.of(known(persons, duty.missed()).account())),
                0);
    }

    private static List<AccountId> accounts(Map<String, Viewer.Person> persons, List<String> keys) {
        return keys.stream().map(key -> known(persons, key).account()).toList();
    }

    private static Viewer.Person known(Map<String, Viewer.Person> persons, String key) {
        return Optional.ofNullable(persons.get(key))
                .orElseThrow(() -> new IllegalStateException("content/demo: nobody has the key \"" + key + "\""));
    }

    private Map<String, Viewer.Person> invite() {
        var ids = new HashMap<String, AccountId>();
        people.all().forEach((key, person) -> {
            var invitation = accounts.invite(MACHINE, person);
            var url = invitation.url();
            passwords.set(url.substring(url.lastIndexOf('/') + 1), people.passPhrase());
            ids.put(key, invitation.account());
        });
        var known = accounts.byId(MACHINE, ids.values());
        var persons = new HashMap<String, Viewer.Person>();
        ids.forEach((key, id) -> persons.put(key, person(java.util.Objects.requireNonNull(known.get(id)))));
        return persons;
    }

    private static Viewer.Person person(Account account) {
        return new Viewer.Person(account.id(), account.name(), account.roles(), account.language(), account.zone());
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }
}
