package org.hearthway.access.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** People in an order that can be changed: up, down, off the list, and one more at its end. */
final class OrderList extends Div {

    private final Words words;
    private final Language language;
    private final List<Account> able;
    private final List<Account> people;
    private final OrderedList list = new OrderedList();
    private final Select<Account> more = new Select<>();

    /**
     * Draws it.
     *
     * @param people in their order; who is not among the able is passed over and says so
     * @param able who may be put on the list
     */
    OrderList(Words words, Language language, String title, String note, List<Account> people, List<Account> able) {
        this.words = words;
        this.language = language;
        this.people = new ArrayList<>(people);
        this.able = able;
        addClassNames("hw-sheet", "hw-order");
        more.setLabel(say("access.on-call.add"));
        more.setItemLabelGenerator(this::named);
        more.addValueChangeListener(
                chosen -> Optional.ofNullable(chosen.getValue()).ifPresent(one -> {
                    this.people.add(one);
                    more.setInvalid(false);
                    draw();
                }));
        add(Tags.h2("", title), Tags.p("hw-quiet hw-s", note), list, more);
        draw();
    }

    /** The people as they stand now. */
    List<AccountId> order() {
        return people.stream().map(Account::id).toList();
    }

    /** Where a problem with the list is shown. */
    Select<Account> field() {
        return more;
    }

    private void draw() {
        list.removeAll();
        for (int place = 0; place < people.size(); place++) {
            list.add(row(place));
        }
        var left = able.stream().filter(one -> !people.contains(one)).toList();
        more.clear();
        more.setItems(left);
        more.setEnabled(!left.isEmpty());
    }

    private ListItem row(int place) {
        var person = people.get(place);
        var who = Tags.div("who", Tags.span("hw-b", person.name()), Tags.span("hw-sub", roles(person)));
        if (!able.contains(person)) {
            who.add(Tags.span("hw-label ember", say("access.on-call.passed-over")));
        }
        var acts = Tags.div("acts");
        if (place > 0) {
            acts.add(Tags.round(Icon.UP, say("access.on-call.up", person.name()), pressed -> swap(place, place - 1)));
        }
        if (place + 1 < people.size()) {
            acts.add(Tags.round(
                    Icon.DOWN, say("access.on-call.down", person.name()), pressed -> swap(place, place + 1)));
        }
        acts.add(Tags.round(Icon.CLOSE, say("access.on-call.off", person.name()), pressed -> {
            people.remove(person);
            draw();
        }));
        return new ListItem(who, acts);
    }

    private void swap(int one, int other) {
        Collections.swap(people, one, other);
        draw();
    }

    private String named(Account person) {
        return say("access.on-call.person", person.name(), roles(person));
    }

    private String roles(Account person) {
        return person.roles().stream()
                .sorted()
                .map(role -> say("access.role." + role.name()))
                .collect(Collectors.joining(", "));
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
