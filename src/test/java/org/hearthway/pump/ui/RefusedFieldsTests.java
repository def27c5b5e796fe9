package org.hearthway.pump.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.hearthway.base.Language;
import org.hearthway.pump.PumpOutlook;
import org.hearthway.pump.engine.ClinicRules;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;

/** Whatever the book refuses stands at the field that it is about, and not in a note that goes by. */
class RefusedFieldsTests {

    private static final Path CHECKS = Path.of("src/main/java/org/hearthway/pump/internal/EntryChecks.java");
    private static final Pattern REFUSAL = Pattern.compile("\\b(?:add|lack|reason|most|words)\\(\\s*\"(\\w+)\"");

    /** Of the form as a whole. */
    private static final Set<String> OF_ALL_FORMS = Set.of("at", "unusual", "correction");

    private static final PumpOutlook NOTHING_KNOWN = new PumpOutlook(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());

    private static Set<String> names(Consumer<FormFields> body) {
        var words = new Words();
        var say = new PumpWords(words, Language.EN);
        var zone = ZoneId.of("America/New_York");
        var fields = new FormFields(
                new FormSay(words, say, new PumpFigures(say, zone), ClinicRules.usual(), zone), "test", () -> {});
        body.accept(fields);
        return fields.named().keySet();
    }

    private static Set<String> refused() throws IOException {
        var found = new HashSet<String>();
        var refusals = REFUSAL.matcher(Files.readString(CHECKS));
        while (refusals.find()) {
            found.add(refusals.group(1));
        }
        assertThat(found).hasSizeGreaterThan(15).containsAll(OF_ALL_FORMS);
        found.removeAll(OF_ALL_FORMS);
        return found;
    }

    @Test
    void everyRefusalOfARefillHasItsField() throws IOException {
        var expected = refused();
        expected.remove("reason");
        for (var elsewhere : List.of(true, false)) {
            assertThat(names(fields -> new RefillBody(fields, NOTHING_KNOWN, elsewhere, "me")))
                    .containsAll(expected)
                    .contains("added", "dosing", "dose");
        }
    }

    @Test
    void everyRefusalOfAChangeHasItsField() {
        assertThat(names(fields -> new ChangeBody(fields, NOTHING_KNOWN)))
                .contains("reason", "printedAlarm", "strength", "dosing", "dose");
    }

    @Test
    void everyFigureOfThePumpHasItsField() {
        assertThat(names(fields -> new ImplantBody(fields, List.of())))
                .contains("reservoir", "alarm", "tubing", "deliverable", "life", "length", "perLength");
    }
}
