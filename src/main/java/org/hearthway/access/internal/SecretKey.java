package org.hearthway.access.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The key from which tokens are derived. It lies beside the database and not in it, in a file that only its owner
 * may read, made at the first start.
 */
@Component
class SecretKey {

    private static final String FILE = "links.key";
    private static final int BYTES = 32;
    private static final String ALGORITHM = "HmacSHA256";

    private final SecretKeySpec key;

    SecretKey(@Value("${hearthway.data}") String folder) {
        this.key = new SecretKeySpec(read(Path.of(folder).toAbsolutePath().normalize()), ALGORITHM);
    }

    private static byte[] read(Path folder) {
        try {
            Files.createDirectories(folder);
            var file = folder.resolve(FILE);
            if (Files.notExists(file)) {
                make(folder, file);
            }
            var bytes = Files.readAllBytes(file);
            if (bytes.length != BYTES) {
                throw new IllegalStateException(file + " must hold " + BYTES + " bytes and holds " + bytes.length
                        + ": put the right file back, or remove it and every link sent so far is dead");
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Written aside and moved into place, so that a kill leaves no half a key. */
    private static void make(Path folder, Path file) throws IOException {
        var bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        var aside = Files.createTempFile(folder, FILE, ".new", ownerOnly(Files.getFileStore(folder)));
        try {
            Files.write(aside, bytes, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
            Files.move(aside, file);
        } catch (FileAlreadyExistsException madeByAnotherAtTheSameMoment) {
            Files.delete(aside);
        }
    }

    private static FileAttribute<?>[] ownerOnly(FileStore store) {
        return store.supportsFileAttributeView("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    /** The keyed digest of a text, 32 bytes. */
    byte[] digest(String text) {
        try {
            var mac = Mac.getInstance(ALGORITHM);
            mac.init(key);
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
