package org.hearthway.reminder.internal;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes messages as {@code .eml} files into a folder, for a clinic that has set no mail server. */
class FolderPostman implements Postman {

    private final Path folder;

    FolderPostman(Path folder) {
        this.folder = folder;
    }

    /** Written aside and moved into place: a kill leaves a whole file or none, and writing again changes nothing. */
    @Override
    public void deliver(MimeMessage message) throws NotTaken {
        try {
            Files.createDirectories(folder);
            var name = message.getMessageID().replaceAll("[^A-Za-z0-9@.-]", "");
            var aside = Files.createTempFile(folder, "writing", ".part");
            try (var out = Files.newOutputStream(aside)) {
                message.writeTo(out);
            }
            Files.move(aside, folder.resolve(name + ".eml"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException | MessagingException e) {
            throw new NotTaken("folder", false, false);
        }
    }

    @Override
    public boolean sends() {
        return false;
    }
}
