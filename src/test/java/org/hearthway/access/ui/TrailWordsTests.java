package org.hearthway.access.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Change;
import org.hearthway.base.Language;
import org.hearthway.caseload.events.NeedWorked;
import org.hearthway.task.events.TaskWorked;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AssignableTypeFilter;

class TrailWordsTests {

    private final Words words = new Words();

    @Test
    void haveWordsForEveryChangeAndEveryRefusal() {
        var marks = new ArrayList<String>();
        var scan = new ClassPathScanningCandidateComponentProvider(false);
        scan.addIncludeFilter(new AssignableTypeFilter(Change.class));
        scan.findCandidateComponents("org.hearthway").stream()
                .map(found -> found.getBeanClassName().replaceAll(".*\\.", ""))
                .filter(kind -> !kind.contains("$")
                        && !kind.equals(NeedWorked.class.getSimpleName())
                        && !kind.equals(TaskWorked.class.getSimpleName()))
                .forEach(kind -> marks.add("changed: " + kind));
        List.of("SEEN", "TAKEN", "SET_ASIDE", "RESUMED", "CLOSED")
                .forEach(step -> marks.add("changed: NeedWorked/" + step));
        List.of("CHANGED", "TICKED", "DONE", "NOT_NEEDED", "SET_ASIDE", "TAKEN_BACK")
                .forEach(step -> marks.add("changed: TaskWorked/" + step));
        Arrays.stream(Action.values()).forEach(action -> marks.add("refused: " + action));
        assertThat(marks).hasSizeGreaterThan(30);
        assertThat(marks)
                .allSatisfy(mark ->
                        assertThat(words.keys(Language.EN)).contains("access.trail.did." + TrailWords.mark(mark)));
    }

    @Test
    void makeAMarkTheEndOfAKey() {
        assertThat(TrailWords.mark("changed: NeedWorked/SET_ASIDE")).isEqualTo("changed-need-worked-set-aside");
        assertThat(TrailWords.mark("machine:stay-signed-in")).isEqualTo("machine-stay-signed-in");
    }
}
