package org.hearthway.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Handout;
import org.hearthway.choosing.Talk;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;

/** The two pages about choosing, as a signed-in person opens them. */
@WebTest
@Import(SignInRequests.class)
class ChoosingPagesTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);

    @Autowired
    private Choosing choosing;

    @Autowired
    private ChildRegister register;

    @Autowired
    private SignOff signOff;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private SignInRequests people;

    @Autowired
    private MockMvc web;

    private ChildId child = ChildId.random();
    private MockHttpSession nurse = new MockHttpSession();

    @BeforeEach
    void aChildAndANurse() throws Exception {
        child = child(3);
        nurse = session(Role.NURSE);
    }

    private ChildId child(int level) {
        var born = HearthwayTest.START.atZone(People.ZONE).toLocalDate().minusYears(5);
        return register.enter(
                ADMINISTRATOR,
                ChildData.plain(Names.plain("Maximiliana", "Featherstonehaugh-Orbell"), born, Optional.of(level), 2));
    }

    private MockHttpSession session(Role role) throws Exception {
        var somebody = people.fresh(role);
        return (MockHttpSession) web.perform(SignInRequests.signIn(somebody.email(), SignInRequests.PASSWORD))
                .andReturn()
                .getRequest()
                .getSession(false);
    }

    private void acceptTexts() {
        signOff.accept(
                ADMINISTRATOR,
                signOff.all(ADMINISTRATOR).stream()
                        .map(FamilyText::item)
                        .filter(item -> item.kind().equals("choosing"))
                        .toList());
    }

    private String address(ChildId of, String page) {
        return "/staff/child/" + of + "/choosing/" + page;
    }

    private byte[] paper(ChildId of, String page, Language language) throws Exception {
        return web.perform(get(address(of, page)).session(nurse).param("lang", language.tag()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
    }

    private static String text(byte[] paper) throws IOException {
        try (var document = Loader.loadPDF(paper)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static int pages(byte[] paper) throws IOException {
        try (var document = Loader.loadPDF(paper)) {
            return document.getNumberOfPages();
        }
    }

    private void enter(ChildId of, Map<String, Set<String>> choices) {
        var facts = new HashMap<String, Answer.Data>();
        choices.forEach((fact, held) -> facts.put(fact, new Answer.Data(held, "")));
        choosing.enter(PHYSICIAN, of, facts, choosing.talk(PHYSICIAN, of).version());
    }

    @Test
    void bothPagesSayWhoDecidesInBothLanguages() throws Exception {
        acceptTexts();
        assertThat(text(paper(child, "team", Language.EN)))
                .contains("The team and the family decide.", "Kind of tone problem: not known", "NICE CG145");
        assertThat(text(paper(child, "team", Language.ES))).contains("Deciden el equipo y la familia.");
        assertThat(text(paper(child, "family", Language.EN))).contains("The team and you decide together.");
        assertThat(text(paper(child, "family", Language.ES))).contains("El equipo y ustedes deciden juntos.");
    }

    @Test
    void aStepOnTheLadderStandsBesideForWhomItIsOtherwiseAndNotAtLevelFive() throws Exception {
        acceptTexts();
        assertThat(text(paper(child, "team", Language.EN)))
                .contains("about one device level", "Some do not change, a few lose ability.");
        assertThat(text(paper(child, "family", Language.EN)))
                .contains("move up about one step", "Some do not change. A few lose some of what they can do.");
        var five = child(5);
        assertThat(text(paper(five, "team", Language.EN))).doesNotContain("about one device level");
        assertThat(text(paper(five, "family", Language.EN))).doesNotContain("move up about one step");
    }

    @Test
    void theFamilyReadsNoTextThatTheClinicHasNotAccepted() throws Exception {
        signOff.all(ADMINISTRATOR).stream()
                .map(FamilyText::item)
                .filter(item -> item.kind().equals("choosing"))
                .forEach(item -> signOff.sendBack(ADMINISTRATOR, item, "To be read again", seen(item)));
        assertThat(text(paper(child, "family", Language.EN)))
                .contains("Nerve-root surgery", "Ask your team about this way.")
                .doesNotContain("nerve threads");
        signOff.all(ADMINISTRATOR).stream()
                .map(FamilyText::item)
                .filter(item -> item.kind().equals("choosing"))
                .forEach(item -> signOff.accept(ADMINISTRATOR, item, seen(item)));
        assertThat(text(paper(child, "family", Language.EN))).contains("nerve threads");
    }

    private int seen(SignOff.Item item) {
        return signOff.decisions(ADMINISTRATOR).stream()
                .filter(decision -> decision.item().equals(item))
                .mapToInt(SignOff.Decision::number)
                .max()
                .orElse(0);
    }

    @Test
    void everyPageIsWrittenToTheTrailAndClosedToOthers() throws Exception {
        paper(child, "team", Language.EN);
        paper(child, "family", Language.EN);
        assertThat(trail.newest(ADMINISTRATOR, 50).stream()
                        .filter(line -> line.child().equals(Optional.of(child)))
                        .map(AuditTrail.Line::what))
                .contains("looked: choosing team page", "looked: choosing family page");
        for (var role : List.of(Role.CAREGIVER, Role.COORDINATOR, Role.ADMINISTRATOR)) {
            var session = session(role);
            for (var page : List.of("team", "family")) {
                web.perform(get(address(child, page)).session(session)).andExpect(status().isNotFound());
                web.perform(get(address(ChildId.random(), page)).session(session))
                        .andExpect(status().isNotFound());
            }
        }
        web.perform(get(address(child, "family"))).andExpect(status().is3xxRedirection());
    }

    /** Of many children the ones with the most to say, one for each column and one for the whole. */
    @Test
    void theLongestPagesStayOnePage() throws Exception {
        acceptTexts();
        var facts = choosing.facts().stream()
                .flatMap(group -> group.facts().stream())
                .filter(fact -> fact.origin() == Fact.Origin.ASKED)
                .toList();
        var random = new Random(20260312);
        var many = new ArrayList<Map<String, Set<String>>>();
        many.add(Map.of());
        for (var n = 0; n < 120; n++) {
            many.add(some(facts, random));
        }
        for (var language : Language.values()) {
            var longest = many.stream()
                    .max(Comparator.comparingInt(each -> column(choosing.talkIf(PHYSICIAN, child, each), language)))
                    .orElseThrow();
            enter(child, longest);
            assertThat(pages(kept(paper(child, "team", language), "team", language)))
                    .isEqualTo(1);
        }
        for (var language : Language.values()) {
            var longest = many.stream()
                    .limit(16)
                    .max(Comparator.comparingInt(each -> family(each, language)))
                    .orElseThrow();
            var one = child(3);
            enter(one, longest);
            assertThat(pages(kept(paper(one, "family", language), "family", language)))
                    .isEqualTo(1);
        }
    }

    /** To be looked at by whoever changes a text. */
    private static byte[] kept(byte[] paper, String page, Language language) throws IOException {
        var folder = Files.createDirectories(Path.of("target", "screens"));
        Files.write(folder.resolve("choosing-" + page + "-" + language.tag() + ".pdf"), paper);
        return paper;
    }

    private static Map<String, Set<String>> some(List<Fact> facts, Random random) {
        var known = new HashMap<String, Set<String>>();
        for (var fact : facts) {
            if (random.nextInt(8) > 0) {
                var choice = fact.choices().get(random.nextInt(fact.choices().size()));
                var other = fact.choices().get(random.nextInt(fact.choices().size()));
                known.put(fact.id(), fact.many() ? Set.copyOf(List.of(choice.id())) : Set.of(choice.id()));
                if (fact.many() && !other.equals(choice)) {
                    known.put(fact.id(), Set.of(choice.id(), other.id()));
                }
            }
        }
        return known;
    }

    private static int column(Talk talk, Language language) {
        return talk.paths().stream()
                .mapToInt(path -> path.lines().stream()
                        .mapToInt(line -> 45
                                + line.holds()
                                        .map(holds -> holds.says().in(language).length())
                                        .orElse(20))
                        .sum())
                .max()
                .orElse(0);
    }

    private int family(Map<String, Set<String>> known, Language language) {
        var one = child(3);
        enter(one, known);
        return choosing.handout(PHYSICIAN, one).paths().stream()
                .map(Handout.Section::body)
                .flatMap(Optional::stream)
                .mapToInt(body -> body.lines().stream()
                                .mapToInt(line -> 40 + line.says().in(language).length())
                                .sum()
                        + body.missing().stream()
                                .mapToInt(name -> name.in(language).length())
                                .sum()
                        + body.usual().stream()
                                .mapToInt(each -> each.in(language).length())
                                .sum())
                .sum();
    }
}
