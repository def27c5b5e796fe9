package org.hearthway.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Allergies;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpEntry;
import org.hearthway.testing.Children;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@WebTest
class EmergencySheetTests {

    private static final LocalDate PRINTED = LocalDate.of(2026, 3, 3);
    private static final PlanData PLAN =
            new PlanData("555-0177", "Tip at T6", "Give baclofen by mouth and call the team.", "");

    @Autowired
    private EmergencySheets sheets;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Devices devices;

    @Autowired
    private PumpBook settings;

    @Autowired
    private Households households;

    @Autowired
    private Accounts accounts;

    @Autowired
    private SignOff signOff;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private SettableClock clock;

    @Autowired
    private MockMvc web;

    private final Viewer.Person administrator = People.with(Role.ADMINISTRATOR);
    private Viewer.Person nurse = People.with(Role.NURSE);
    private Viewer.Person physician = People.with(Role.PHYSICIAN);

    @BeforeEach
    void twoHumans() {
        nurse = colleague("Nell Rowan " + clock.instant() + Math.abs(hashCode()), Role.NURSE);
        physician = colleague("Dr. Ames", Role.PHYSICIAN);
    }

    private Viewer.Person colleague(String name, Role role) {
        var invited = accounts.invite(
                administrator, new NewAccount(name, People.freshEmail(), "", Set.of(role), Language.EN, People.ZONE));
        return new Viewer.Person(invited.account(), name, Set.of(role), Language.EN, People.ZONE);
    }

    private ChildId withPump() {
        var child = Children.enter(register);
        devices.enter(
                nurse,
                child,
                Device.Kind.PUMP,
                List.of(
                        new Device.Part(What.RESERVOIR, "PX-4471", PRINTED.minusYears(1), Optional.empty()),
                        new Device.Part(What.CATHETER, "C-20", PRINTED.minusYears(1), Optional.empty())));
        PumpBooks.refilled(settings, nurse, physician, child, PRINTED, LocalDate.of(2026, 6, 23));
        return child;
    }

    private PumpEntry set(ChildId child, String strength) {
        return PumpBooks.set(settings, nurse, child, strength, "120", PRINTED);
    }

    private void acceptWarnings() {
        signOff.accept(
                administrator,
                signOff.all(administrator).stream()
                        .map(FamilyText::item)
                        .filter(item -> item.kind().equals("emergency"))
                        .collect(Collectors.toList()));
    }

    private String page(String path) throws Exception {
        return web.perform(get(path).locale(java.util.Locale.ENGLISH))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private byte[] paper(String path, String language) throws Exception {
        return web.perform(get(path + "/sheet.pdf").param("lang", language))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Type", "application/pdf"))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    @Test
    void showsStrengthAndDoseOnlyOnceASecondPersonConfirmedThem() throws Exception {
        var child = withPump();
        var path = sheets.open(nurse, child).path();
        assertThat(page(path)).contains("PX-4471", "not recorded: read the device");
        var entry = set(child, "500");
        assertThat(page(path)).contains("not confirmed: read the device").doesNotContain("500 mcg", "120 mcg");
        PumpBooks.check(settings, physician, child, entry);
        assertThat(page(path))
                .contains("500 mcg/mL", "120 mcg a day", "Jun 23, 2026")
                .doesNotContain("not confirmed");
        set(child, "1000");
        assertThat(page(path))
                .as("a newer setting that waits takes the older one off the sheet: the pump may be set anew")
                .contains("not confirmed")
                .doesNotContain("500 mcg", "1000 mcg");
    }

    @Test
    void aLinkEndsAndThenSaysTheSameAsOneThatNeverWas() throws Exception {
        var child = withPump();
        var path = sheets.open(nurse, child).path();
        page(path);
        clock.set(clock.instant().plus(Duration.ofHours(2)));
        for (var dead : List.of(path, "/emergency/never")) {
            web.perform(get(dead))
                    .andExpect(status().isNotFound())
                    .andExpect(content().string(containsString("555-0121")))
                    .andExpect(content().string(not(containsString("Wren"))));
            web.perform(get(dead + "/sheet.pdf")).andExpect(status().isSeeOther());
        }
    }

    @Test
    void everyLookIsWrittenToTheTrail() throws Exception {
        var child = withPump();
        var path = sheets.open(nurse, child).path();
        page(path);
        paper(path, "en");
        var lines = trail.newest(administrator, 50).stream()
                .filter(line -> line.child().equals(Optional.of(child)))
                .map(AuditTrail.Line::what)
                .collect(Collectors.toList());
        assertThat(lines)
                .contains("looked: emergency sheet link", "looked: emergency sheet", "looked: emergency sheet paper");
    }

    @Test
    void warnsOfHeatAsLongAsALeadStaysAfterTheGeneratorIsGone() throws Exception {
        acceptWarnings();
        var child = Children.enter(register);
        var in = PRINTED.minusYears(3);
        var id = devices.enter(
                nurse,
                child,
                Device.Kind.STIMULATOR,
                List.of(
                        new Device.Part(What.GENERATOR, "G1", in, Optional.of(PRINTED)),
                        new Device.Part(What.LEAD, "L1", in, Optional.empty())));
        var path = sheets.open(nurse, child).path();
        assertThat(page(path)).contains("NO heat treatment").doesNotContain("Strength");
        devices.change(
                nurse,
                child,
                id,
                List.of(
                        new Device.Part(What.GENERATOR, "G1", in, Optional.of(PRINTED)),
                        new Device.Part(What.LEAD, "L1", in, Optional.of(PRINTED))),
                1);
        assertThat(page(path)).doesNotContain("NO heat treatment").contains("none recorded");
    }

    @Test
    void onlyAPhysicianSignsAndOfTwoTheSecondIsTold() {
        var child = withPump();
        assertThatThrownBy(() -> sheets.sign(nurse, child, PLAN, 0)).isInstanceOf(NotAvailable.class);
        sheets.sign(physician, child, PLAN, 0);
        assertThatThrownBy(() -> sheets.sign(physician, child, PLAN, 0)).isInstanceOf(Overtaken.class);
        assertThat(sheets.plan(nurse, child).orElseThrow().signedByName()).isEqualTo("Dr. Ames");
    }

    @Test
    void refusesAPlanWithoutALineOrWithoutWords() {
        var child = withPump();
        assertThatThrownBy(() -> sheets.sign(
                        physician, child, new PlanData("ask", "c".repeat(201), "w".repeat(701), "s".repeat(701)), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::field)
                                .containsExactly("surgeonLine", "catheter", "withdrawal", "storm"));
        assertThatThrownBy(() -> sheets.sign(physician, child, new PlanData("555-0177", "", " ", ""), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::key)
                                .containsExactly("paper.problem.plan.missing"));
    }

    @Test
    void aStrangerToTheChildGetsNoLink() {
        var child = withPump();
        var parent = Children.caregiver(households, child, Reach.VIEW_ONLY);
        assertThat(sheets.open(parent, child).until()).isEqualTo(clock.instant().plus(Duration.ofHours(2)));
        assertThatThrownBy(() -> sheets.open(People.with(Role.CAREGIVER), child))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> sheets.sheet(People.with(Role.CAREGIVER), child))
                .isInstanceOf(NotAvailable.class);
    }

    private static final String PROSE = "Give baclofen by mouth as the chart says, watch the heart. ";
    /** Points of the name when the letters are of the usual size. */
    private static final float USUAL_HEADING = 22f;

    private static final int MOST_LINES = 13;

    static Stream<String> longestPlans() {
        return Stream.of(
                PROSE.repeat(16).substring(0, 700),
                "Give baclofen by mouth, then watch heart.\n".repeat(MOST_LINES).strip(),
                "Call.\n".repeat(MOST_LINES).strip(),
                // letters as wide as they come, at the edge of what a line is taken to hold
                ("W".repeat(23) + "\n").repeat(MOST_LINES).strip());
    }

    /** Both plans as long as they may be, both devices, a name in another alphabet: one page in letters of the usual size. */
    @ParameterizedTest
    @MethodSource("longestPlans")
    void thePaperIsOnePageWithEveryLetterInIt(String plan) throws Exception {
        acceptWarnings();
        var child = withBothDevices(
                new ChildData(
                        new Names("Łucja", "Łucja Élodie", "Жукова", "Núñez"),
                        LocalDate.of(2019, 5, 4),
                        Optional.empty(),
                        Optional.of(3),
                        2,
                        new Allergies(true, List.of("latex (hives)", "penicillin (rash)", "adhesive tape")),
                        "Polish"),
                3);
        sheets.sign(physician, child, new PlanData("555-0177", "Tip at T6", plan, plan), 0);
        var path = sheets.open(nurse, child).path();
        for (var language : List.of("en", "es")) {
            var bytes = paper(path, language);
            Files.createDirectories(Path.of("target/papers"));
            Files.write(
                    Path.of("target/papers/emergency-" + plan.charAt(0) + plan.length() + language + ".pdf"), bytes);
            try (var document = Loader.loadPDF(bytes)) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
                assertThat(lettersOf(document)).as("points").contains(USUAL_HEADING);
                assertThat(text(document)).contains("Łucja Жукова Núñez", "555-0177", "PX-4471", "500 mcg/mL");
                assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language);
                for (var page : document.getPages()) {
                    for (var name : names(page.getResources())) {
                        assertThat(page.getResources().getFont(name).isEmbedded())
                                .isTrue();
                    }
                }
            }
        }
    }

    /** Everything that can be typed of a child and of two devices, as long as it may be: smaller letters, one page. */
    @Test
    void theLongestSheetThatCanBeTypedIsOnePage() throws Exception {
        acceptWarnings();
        var allergies = Stream.generate(() -> "adhesive tape, ".repeat(14).substring(0, 200))
                .limit(20)
                .toList();
        var child = withBothDevices(
                new ChildData(
                        new Names(
                                "Maximiliana ".repeat(6).strip(),
                                "Wilhelmina ".repeat(7).strip(),
                                "Brandenburg".repeat(10),
                                "Núñez".repeat(24)),
                        LocalDate.of(2019, 5, 4),
                        Optional.empty(),
                        Optional.of(3),
                        2,
                        new Allergies(true, allergies),
                        "P".repeat(60)),
                12);
        var plan = PROSE.repeat(16).substring(0, 700);
        sheets.sign(physician, child, new PlanData("5".repeat(60), "Tip at T6 ".repeat(20), plan, plan), 0);
        var path = sheets.open(nurse, child).path();
        for (var language : List.of("en", "es")) {
            try (var document = Loader.loadPDF(paper(path, language))) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
                assertThat(text(document)).contains("Dr. Ames");
            }
        }
    }

    private static Set<Float> lettersOf(PDDocument document) throws IOException {
        var sizes = new HashSet<Float>();
        var stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                sizes.add(Math.round(text.getFontSizeInPt() * 10) / 10f);
            }
        };
        stripper.getText(document);
        return sizes;
    }

    private ChildId withBothDevices(ChildData data, int parts) {
        var child = register.enter(administrator, data);
        devices.enter(nurse, child, Device.Kind.PUMP, parts(parts, "PX-4471", What.RESERVOIR, What.CATHETER));
        devices.enter(nurse, child, Device.Kind.STIMULATOR, parts(parts, "G1", What.GENERATOR, What.LEAD));
        PumpBooks.check(settings, physician, child, set(child, "500"));
        return child;
    }

    private static List<Device.Part> parts(int count, String serial, What first, What others) {
        var in = PRINTED.minusYears(2);
        return IntStream.range(0, count)
                .mapToObj(n -> n == 0
                        ? new Device.Part(first, serial, in, Optional.empty())
                        : new Device.Part(others, "L" + n + "-".repeat(count), in, Optional.empty()))
                .toList();
    }

    @Test
    void aPlanOfMoreLinesThanTheSheetHoldsIsRefusedWithTheBound() {
        var child = withPump();
        var lines = "Call.\n".repeat(MOST_LINES + 1).strip();
        assertThatThrownBy(() -> sheets.sign(physician, child, new PlanData("555-0177", "", lines, "Call."), 0))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        invalid -> assertThat(invalid.problems())
                                .containsExactly(Problem.at(
                                        "withdrawal", "paper.problem.plan.lines", MOST_LINES, MOST_LINES + 1)));
    }

    @Test
    void afterManyPapersThePageStillOpensAndSaysWhenTheNextOneIsMade() throws Exception {
        var child = withPump();
        var path = sheets.open(nurse, child).path();
        var second = sheets.open(nurse, child).path();
        var others = sheets.open(physician, child).path();
        for (int made = 0; made < 15; made++) {
            paper(path, "en");
            paper(second, "en");
        }
        web.perform(get(second + "/sheet.pdf").param("lang", "en"))
                .andExpect(status().isSeeOther())
                .andExpect(header().string("Location", second + "?lang=en"));
        assertThat(page(path))
                .contains("PX-4471", "can be made from 10:11", "555-0121")
                .doesNotContain("Open as PDF");
        paper(others, "en");

        clock.advance(Duration.ofMinutes(10));
        assertThat(page(path)).contains("Open as PDF");
        paper(path, "en");
    }

    private static List<COSName> names(PDResources resources) {
        return StreamSupport.stream(resources.getFontNames().spliterator(), false)
                .collect(Collectors.toList());
    }

    @Test
    void whatPeopleTypedIsTextOnPaperToo() throws Exception {
        var child = withPump();
        var number = 0L;
        for (var hostile : HostileStrings.all().toList()) {
            clock.advance(Duration.ofMinutes(1));
            var shortened = hostile.length() > 200 ? hostile.substring(0, 200) : hostile;
            sheets.sign(physician, child, new PlanData("555-0177", shortened, shortened + ".", ""), number++);
            var path = sheets.open(nurse, child).path();
            try (var document = Loader.loadPDF(paper(path, "en"))) {
                assertThat(text(document)).contains("555-0177", "Signed by Dr. Ames");
            }
        }
    }
}
