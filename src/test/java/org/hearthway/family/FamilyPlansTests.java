package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;

/** In a real clinic no family reads the words of a path that nobody of the clinic has accepted. */
@HearthwayTest
class FamilyPlansTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private FamilyPlans familyPlans;

    @Autowired
    private Readers readers;

    @Autowired
    private Plans plans;

    @Autowired
    private PathNews.Source news;

    @Autowired
    private StageNeeds needs;

    @Autowired
    private ClinicSettings clinic;

    @Autowired
    private Facts facts;

    @Autowired
    private SignOff signOff;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Words words;

    private Reader family(String path) {
        var child = Children.enter(register);
        if (!path.isEmpty()) {
            plans.begin(People.with(Role.PHYSICIAN), child, path, Plans.Beginning.INSTEAD, TODAY, "as agreed");
        }
        var parent = Children.caregiver(households, child, Reach.FULL);
        return new Reader(parent, register.get(parent, child), HearthwayTest.START, words);
    }

    private String page(Reader reader) {
        var nothing = new StaticListableBeanFactory().getBeanProvider(AlongsideSection.class);
        var page = new PathView(readers, familyPlans, news, needs, new Alongside(nothing), clinic);
        page.draw(reader);
        return page.getElement().getTextRecursively()
                + facts.pair(reader).getElement().getTextRecursively();
    }

    private SignOff.Item item(String path, int more) {
        var template = plans.pathways().stream()
                .filter(each -> each.id().equals(path))
                .findFirst()
                .orElseThrow();
        return new SignOff.Item("paths", path, template.version() + more);
    }

    /** No other test accepts the words of this path. */
    @Test
    void hidesAPathUntilAnAdministratorAcceptsTheVeryVersionOfItsWords() {
        var reader = family("dbs");
        var first = plans.plans(reader.viewer(), reader.id()).stream()
                .findFirst()
                .orElseThrow()
                .plan()
                .stages()
                .get(0);
        var name = first.stage().name().in(Language.EN);
        signOff.accept(ADMINISTRATOR, List.of(item("dbs", -1), item("dbs", 1), new SignOff.Item("signs", "dbs", 1)));

        assertThat(familyPlans.plans(reader)).isEmpty();
        assertThat(familyPlans.isHeldBack(reader)).isTrue();
        assertThat(familyPlans.precautions(reader, TODAY)).isEmpty();
        assertThat(page(reader)).contains("Not here yet").doesNotContain(name);

        signOff.accept(ADMINISTRATOR, List.of(item("dbs", 0)));

        assertThat(familyPlans.plans(reader)).isNotEmpty();
        assertThat(familyPlans.isHeldBack(reader)).isFalse();
        assertThat(page(reader)).contains(name).doesNotContain("Not here yet");
    }

    @Test
    void saysOfAChildWithoutAPathThatThereIsNone() {
        var reader = family("");

        assertThat(familyPlans.plans(reader)).isEmpty();
        assertThat(familyPlans.isHeldBack(reader)).isFalse();
        assertThat(page(reader)).contains("No path yet").doesNotContain("Not here yet");
    }

    @Test
    void hidesNothingFromTheTeam() {
        var reader = family("sdr");

        assertThat(plans.plans(People.with(Role.THERAPIST), reader.id())).isNotEmpty();
        assertThat(plans.precautions(People.with(Role.THERAPIST), reader.id(), TODAY))
                .isNotNull();
    }
}
