package org.hearthway.content;

import java.util.List;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;

/**
 * Reads all content before the first request and stops the start with every mistake at once.
 */
@Component
class ContentCheck implements SmartInitializingSingleton {

    private final List<ContentKind> kinds;
    private final ContentFolder folder;

    ContentCheck(List<ContentKind> kinds, ContentFolder folder) {
        this.kinds = kinds;
        this.folder = folder;
    }

    @Override
    public void afterSingletonsInstantiated() {
        var mistakes = new Mistakes();
        folder.files().forEach((name, file) -> {
            var kind = kinds.stream().filter(k -> takes(k, name)).findFirst();
            if (kind.isEmpty()) {
                mistakes.add(name, 1, "no part of the program reads this file", "a file in a folder of a known kind");
            } else {
                ContentFolder.read(name, file, mistakes).ifPresent(entry -> {
                    kind.get().read(entry);
                    entry.done();
                });
            }
        });
        kinds.forEach(ContentKind::check);
        if (!mistakes.lines().isEmpty()) {
            throw new ContentBroken(mistakes.lines());
        }
    }

    private static boolean takes(ContentKind kind, String name) {
        return name.equals(kind.place()) || name.startsWith(kind.place() + "/");
    }
}
