package org.hearthway.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.content.SignOff.Decided;
import org.hearthway.content.SignOff.Decision;
import org.hearthway.content.SignOff.Item;
import org.hearthway.content.SignOff.OwnWords;
import org.hearthway.path.Plans;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.sign.Signs;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Each test takes a text of its own: they share one clinic. */
@HearthwayTest
class SignOffTests {

    private final Viewer.Person administrator = People.with(Role.ADMINISTRATOR);

    @Autowired
    private SignOff signOff;

    @Autowired
    private ExerciseLibrary library;

    @Autowired
    private Signs signs;

    @Autowired
    private Plans plans;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private Words words;

    @Autowired
    private SettableClock clock;

    @Autowired
    private PlatformTransactionManager transactions;

    private Item exercise(String id) {
        return library.find(id).orElseThrow().item();
    }

    private List<Decision> decisions(Item item) {
        return signOff.decisions(administrator).stream()
                .filter(each -> each.item().equals(item))
                .toList();
    }

    private List<OwnWords> written(Item item) {
        return signOff.allOwnWords(administrator).stream()
                .filter(each -> each.item().equals(item))
                .toList();
    }

    private List<Problem> problems(Item item, int place, String en, String es) {
        var refused = catchThrowableOfType(Invalid.class, () -> signOff.reword(administrator, item, place, en, es, 0));
        assertThat(refused).as(en + " / " + es).isNotNull();
        return refused.problems();
    }

    private static Tuple at(String field, String key) {
        return Tuple.tuple(field, key);
    }

    @Test
    void aTextSentBackIsHiddenUntilItIsAcceptedAgainAndEveryDecisionStays() {
        var item = exercise("wrist-stretch");
        assertThat(signOff.isShown(item)).isFalse();

        signOff.accept(administrator, List.of(item));
        assertThat(signOff.isShown(item)).isTrue();

        clock.advance(Duration.ofHours(1));
        signOff.sendBack(administrator, item, "  The Spanish says the other hand. ", 1);
        assertThat(signOff.isShown(item)).isFalse();
        assertThat(signOff.shownAmong(List.of(item))).isEmpty();

        signOff.accept(administrator, item, 2);
        assertThat(signOff.isShown(item)).isTrue();
        assertThat(decisions(item))
                .extracting(Decision::number, Decision::decided, Decision::reason)
                .containsExactly(
                        Tuple.tuple(1, Decided.ACCEPTED, ""),
                        Tuple.tuple(2, Decided.SENT_BACK, "The Spanish says the other hand."),
                        Tuple.tuple(3, Decided.ACCEPTED, ""));
        assertThat(decisions(item)).extracting(Decision::by).containsOnly(administrator.tag());
        assertThat(decisions(item).get(1).at()).isEqualTo(HearthwayTest.START.plusSeconds(3600));
    }

    @Test
    void acceptingManyDoesNotBringBackWhatSomebodySentBack() {
        var back = exercise("walker-walk");
        var other = exercise("tall-kneel");
        signOff.sendBack(administrator, back, "too long", 0);

        assertThatThrownBy(() -> signOff.accept(administrator, List.of(other, back)))
                .isInstanceOf(Overtaken.class);

        assertThat(signOff.shownAmong(List.of(back, other))).isEmpty();
        assertThat(decisions(other)).isEmpty();
    }

    @Test
    void aDecisionOnWhatSomebodyElseHasDecidedSinceIsOvertaken() {
        var item = exercise("step-up");
        signOff.accept(administrator, item, 0);

        assertThatThrownBy(() -> signOff.sendBack(administrator, item, "too long", 0))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> signOff.accept(administrator, item, 0)).isInstanceOf(Overtaken.class);

        assertThat(decisions(item)).hasSize(1);
    }

    @Test
    void sendingBackAsksForAReasonOfThreeToFiveHundredCharacters() {
        var item = exercise("squat-table");
        for (var reason : List.of("", "  no ", "x".repeat(501))) {
            assertThat(catchThrowableOfType(Invalid.class, () -> signOff.sendBack(administrator, item, reason, 0))
                            .problems())
                    .extracting(Problem::field, Problem::key)
                    .containsExactly(at("reason", "content.problem.reason"));
        }
        assertThat(decisions(item)).isEmpty();
        signOff.sendBack(administrator, item, "x".repeat(500), 0);
        assertThat(decisions(item)).hasSize(1);
    }

    @Test
    void familiesReadTheClinicsOwnWordsAndTheTextsOwnAgainOnceTheyAreWithdrawn() {
        var before = library.find("bridge").orElseThrow();
        var item = before.item();

        signOff.reword(administrator, item, 0, "Little bridge", "Puentecito", 0);
        signOff.reword(administrator, item, 2, "Lie down on the mat.", "Acostarse en la colchoneta.", 0);
        signOff.reword(administrator, item, before.steps().size() + 2, "Stop if it hurts.", "Parar si duele.", 0);

        var now = library.find("bridge").orElseThrow();
        assertThat(now.name()).isEqualTo(new Bilingual("Little bridge", "Puentecito"));
        assertThat(now.purpose()).isEqualTo(before.purpose());
        assertThat(now.steps().get(0).es()).isEqualTo("Acostarse en la colchoneta.");
        assertThat(now.steps().subList(1, now.steps().size()))
                .isEqualTo(before.steps().subList(1, now.steps().size()));
        assertThat(now.stop().en()).isEqualTo("Stop if it hurts.");
        assertThat(now.usual()).isEqualTo(before.usual());
        assertThat(library.all()).contains(now).doesNotContain(before);

        signOff.withdraw(administrator, item, 0, 1);
        signOff.withdraw(administrator, item, 2, 1);
        signOff.withdraw(administrator, item, before.steps().size() + 2, 1);

        assertThat(library.find("bridge")).contains(before);
        assertThat(written(item)).as("nothing is taken away").hasSize(6);
    }

    @Test
    void aSignAndAPathSpeakInTheClinicsOwnWordsToo() {
        var sign =
                signs.find("medicine-missed").or(() -> signs.find("pump-beep")).orElseThrow();
        var item = new Item("signs", sign.id(), sign.provenance().version());
        signOff.reword(administrator, item, 0, "The box beeps.", "La cajita suena.", 0);
        assertThat(signs.find(sign.id()).orElseThrow().says().in(Language.ES)).isEqualTo("La cajita suena.");
        signOff.withdraw(administrator, item, 0, 1);

        var path = plans.pathways().stream()
                .filter(each -> each.id().equals("sdr"))
                .findFirst()
                .orElseThrow();
        var ofPath = new Item("paths", "sdr", path.version());
        signOff.reword(administrator, ofPath, 1, "First talk with us", "Primera charla con el equipo", 0);
        var reworded = plans.pathways().stream()
                .filter(each -> each.id().equals("sdr"))
                .findFirst()
                .orElseThrow();
        assertThat(reworded.stages().get(0).name().en()).isEqualTo("First talk with us");
        assertThat(reworded.stages().get(0).timing())
                .isEqualTo(path.stages().get(0).timing());
        assertThat(reworded.stages().subList(1, path.stages().size()))
                .isEqualTo(path.stages().subList(1, path.stages().size()));
        signOff.withdraw(administrator, ofPath, 1, 1);
        assertThat(plans.pathways()).contains(path);
    }

    @Test
    void ownWordsDoNotShowATextThatNobodyAccepted() {
        var item = exercise("clam");

        signOff.reword(administrator, item, 0, "Open shell", "La concha", 0);

        assertThat(signOff.isShown(item)).isFalse();
    }

    @Test
    void ownWordsOfOneVersionDoNotSpeakForTheNext() {
        var item = exercise("side-step-table");

        signOff.reword(administrator, item, 0, "Sideways at the table", "De lado junto a la mesa", 0);

        assertThat(signOff.ownWords(item)).hasSize(1);
        assertThat(signOff.ownWords(new Item(item.kind(), item.id(), item.version() + 1)))
                .isEmpty();
    }

    @Test
    void ownWordsAreHeldToTheRulesOfTheContentAndSaySoAtTheField() {
        var item = exercise("heel-raise");
        assertThat(problems(item, 1, " ", "…"))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "content.problem.both"), at("es", "content.problem.both"));
        assertThat(problems(item, 1, "a".repeat(301), "Para pies fuertes."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "content.problem.long"));
        assertThat(problems(item, 1, "For strong feet.", "Para pies\nfuertes."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("es", "content.problem.lines"));
        assertThat(problems(item, 1, "For strong feet.", "For strong feet."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("es", "content.problem.same"));
        assertThat(
                        problems(
                                item,
                                1,
                                "This intervention predominantly facilitates plantarflexor recruitment during ambulation activities and functional participation.",
                                "Esta intervención facilita predominantemente el reclutamiento de los flexores plantares durante actividades funcionales de ambulación."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "content.problem.hard-en"), at("es", "content.problem.hard-es"));
        var name = library.find("heel-raise").orElseThrow().name();
        assertThat(problems(item, 0, name.en(), name.es()))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "content.problem.unchanged"));
        assertThat(written(item)).isEmpty();
    }

    @Test
    void aSignInOwnWordsNeverTellsToWaitAndIsEasyHoweverShort() {
        var beep = signs.find("pump-beep").orElseThrow();
        var item = new Item("signs", "pump-beep", beep.provenance().version());

        assertThat(problems(item, 0, "It beeps. Wait for a day.", "La bomba suena."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "sign.problem.own-waits"));
        assertThat(problems(item, 0, "The pump beeps.", "La bomba suena. Espere un día."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("es", "sign.problem.own-waits"));
        assertThat(problems(item, 0, "Auditory notification activation.", "La bomba suena fuerte."))
                .extracting(Problem::field, Problem::key)
                .containsExactly(at("en", "sign.problem.own-hard"));
    }

    @Test
    void everyRefusalHasWordsInBothLanguages() {
        for (var language : Language.values()) {
            assertThat(words.say(language, Problem.at("en", "content.problem.hard-en", 9.27, 6.9)))
                    .contains("9", "6");
            assertThat(words.say(language, Problem.at("es", "content.problem.long", 300, 4000)))
                    .contains("300");
        }
    }

    @Test
    void whoWritesOverWordsThatCameInBetweenIsOvertakenAndNothingIsLost() {
        var item = exercise("butterfly");
        signOff.reword(administrator, item, 0, "Butterfly wings", "Alas de mariposa", 0);

        assertThatThrownBy(() -> signOff.reword(administrator, item, 0, "Frog legs", "Patas de rana", 0))
                .isInstanceOf(Overtaken.class);
        assertThatThrownBy(() -> signOff.withdraw(administrator, item, 0, 0)).isInstanceOf(Overtaken.class);
        assertThat(signOff.ownWords(item)).containsEntry(0, new Bilingual("Butterfly wings", "Alas de mariposa"));

        signOff.reword(administrator, item, 0, "Frog legs", "Patas de rana", 1);
        signOff.withdraw(administrator, item, 0, 2);
        assertThatThrownBy(() -> signOff.withdraw(administrator, item, 0, 3)).isInstanceOf(Overtaken.class);
        assertThat(written(item))
                .extracting(OwnWords::number, each -> each.words().map(Bilingual::en))
                .containsExactly(
                        Tuple.tuple(1, Optional.of("Butterfly wings")),
                        Tuple.tuple(2, Optional.of("Frog legs")),
                        Tuple.tuple(3, Optional.empty()));
    }

    @Test
    void wordsThatWereNotKeptAreNotShown() {
        var item = exercise("long-sit-reach");
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            signOff.reword(administrator, item, 0, "Reach for your toes", "Tocar los dedos", 0);
            assertThat(signOff.ownWords(item)).isNotEmpty();
            status.setRollbackOnly();
        });
        assertThat(signOff.ownWords(item)).isEmpty();
    }

    @Test
    void aTextOrAPieceThatIsNotThereIsNotAvailable() {
        var item = exercise("clam");
        for (var absent : List.of(
                new Item("exercises", "handstand", 1),
                new Item(item.kind(), item.id(), item.version() + 1),
                new Item("holidays", "general", 1))) {
            assertThatThrownBy(() -> signOff.sendBack(administrator, absent, "not ours", 0))
                    .isInstanceOf(NotAvailable.class);
            assertThatThrownBy(() -> signOff.reword(administrator, absent, 0, "A", "Un", 0))
                    .isInstanceOf(NotAvailable.class);
        }
        for (var place : List.of(-1, 99)) {
            assertThatThrownBy(() -> signOff.reword(administrator, item, place, "A", "Un", 0))
                    .isInstanceOf(NotAvailable.class);
        }
    }

    // the interval is the clinic's own, common practice, no source
    @Test
    void aTextIsLookedAtAgainAYearAfterItsLastLook() {
        var text = signOff.all(administrator).get(0);
        var accepted = LocalDate.of(2026, 3, 12);
        assertThat(signOff.dueAgain(administrator, text, Optional.empty())).isEmpty();
        assertThat(signOff.dueAgain(administrator, text, Optional.of(accepted))).contains(LocalDate.of(2027, 3, 12));

        var reviewed = reviewed(text, "2026-06-01", "2026-08-01");
        assertThat(signOff.dueAgain(administrator, reviewed, Optional.of(accepted)))
                .as("the earlier of both languages, as it is the later look")
                .contains(LocalDate.of(2027, 6, 1));
        assertThat(signOff.dueAgain(administrator, reviewed, Optional.empty())).contains(LocalDate.of(2027, 6, 1));
        assertThat(signOff.dueAgain(administrator, reviewed(text, "2025-06-01", "2025-08-01"), Optional.of(accepted)))
                .contains(LocalDate.of(2027, 3, 12));
    }

    private static FamilyText reviewed(FamilyText text, String english, String spanish) {
        return new FamilyText(
                text.item(),
                text.title(),
                text.texts(),
                new Provenance(
                        "test",
                        1,
                        Optional.of(new Provenance.Review("A. Reader", LocalDate.parse(english))),
                        Optional.of(new Provenance.Review("U. Lectora", LocalDate.parse(spanish)))));
    }

    @Test
    void theTrailKeepsEachDecisionAndNoneOfTheWords() {
        var item = exercise("stair-step");
        signOff.accept(administrator, item, 0);
        signOff.reword(administrator, item, 0, "Up one stair", "Un escalón arriba", 0);
        signOff.withdraw(administrator, item, 0, 1);
        signOff.sendBack(administrator, item, "needs a rail", 1);

        assertThat(trail.newest(administrator, 4))
                .extracting(AuditTrail.Line::what)
                .containsExactly(
                        "text sent back: exercises/stair-step, version 1",
                        "text back to its own words: exercises/stair-step, version 1",
                        "text reworded: exercises/stair-step, version 1",
                        "text accepted: exercises/stair-step, version 1");
    }

    @ParameterizedTest
    @EnumSource(names = "ADMINISTRATOR", mode = EnumSource.Mode.EXCLUDE)
    void areForAdministratorsOnly(Role role) {
        var somebody = People.with(role);
        var item = exercise("clam");
        assertThatThrownBy(() -> signOff.all(somebody)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.decisions(somebody)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.allOwnWords(somebody)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.accept(somebody, List.of(item))).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.accept(somebody, item, 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.sendBack(somebody, item, "too long", 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.reword(somebody, item, 0, "A", "Un", 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> signOff.withdraw(somebody, item, 0, 0)).isInstanceOf(NotAvailable.class);
    }
}
