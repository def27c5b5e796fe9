package org.hearthway.family;

import com.vaadin.flow.component.html.Paragraph;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;

/** What is wrong with a form, said below the part it is about; what was entered stays. */
final class Faults implements Serializable {

    private final Map<String, Paragraph> lines = new LinkedHashMap<>();

    /** The line for a field; the empty name is for the whole form. */
    Paragraph at(String field) {
        return lines.computeIfAbsent(field, name -> {
            var line = Tags.p("hw-fault", "");
            line.getElement().setAttribute("role", "alert");
            line.setVisible(false);
            return line;
        });
    }

    void clear() {
        lines.values().forEach(line -> line.setVisible(false));
    }

    void tell(Reader reader, Invalid invalid) {
        invalid.problems()
                .forEach(problem ->
                        tell(lines.containsKey(problem.field()) ? problem.field() : "", reader.say(problem)));
    }

    void tell(String field, String words) {
        at(field).setText(words);
        at(field).setVisible(true);
    }
}
