package org.snugsheet.office.uno;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes documents into files and reads them, unseen by the user. */
public final class DocumentFile {

    private static final int SECRET_BYTES = 32;

    private DocumentFile() {}

    /**
     * Whether a document was opened or last saved with a password.
     *
     * @param document the document
     * @return true if nobody without the password is to read it
     */
    public static boolean hasPassword(Object document) {
        return given(document, "EncryptionData").isPresent()
                || given(document, "Password").isPresent();
    }

    /**
     * What a document was opened or last saved with.
     *
     * @param document the document
     * @param name of one of the office’s media descriptor
     * @return its value
     */
    public static Optional<Object> given(Object document, String name) {
        return Arrays.stream(Uno.as(XModel.class, document).getArgs())
                .filter(argument -> argument.Name.equals(name))
                .<@Nullable Object>map(argument -> argument.Value)
                .findFirst();
    }

    /**
     * The same document once more, unseen. It goes through a temporary file, which is gone afterwards and, where the document has a
     * password, was never readable: it is locked with a password that nobody ever learns.
     *
     * @param office the office’s context
     * @param document the document
     * @return its twin, to be closed by the caller
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static XComponent twin(XComponentContext office, Object document) throws com.sun.star.uno.Exception {
        Optional<String> password = hasPassword(document) ? Optional.of(unknownPassword()) : Optional.empty();
        try {
            Path file = Files.createTempFile("snugsheet", ".ods");
            try {
                String address = address(file);
                List<PropertyValue> how = new ArrayList<>();
                how.add(Uno.named("FilterName", "calc8"));
                how.add(Uno.named("Overwrite", true));
                password.ifPresent(secret -> how.add(Uno.named("Password", secret)));
                Uno.as(XStorable.class, document).storeToURL(address, how.toArray(PropertyValue[]::new));
                XComponent twin = openHidden(office, address, password);
                // Nobody will undo anything in it; what could be undone would be recorded all the same, which takes
                // long.
                Uno.set(twin, "IsUndoEnabled", false);
                return twin;
            } finally {
                Files.delete(file);
            }
        } catch (IOException noFile) {
            throw new IllegalStateException(noFile);
        }
    }

    /**
     * The address of a file.
     *
     * @param file the file
     * @return its address as the office writes it
     */
    public static String address(Path file) {
        return file.toUri().toString().replaceFirst("^file:/(?!/)", "file:///");
    }

    private static String unknownPassword() {
        byte[] random = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(random);
        return HexFormat.of().formatHex(random);
    }

    /**
     * A file as people write it, for a message.
     *
     * @param address the address of the file
     * @return its path on this computer; the address itself if it is elsewhere
     */
    public static String written(String address) {
        try {
            return Path.of(URI.create(address)).toString();
        } catch (IllegalArgumentException | FileSystemNotFoundException elsewhere) {
            return address;
        }
    }

    /**
     * Opens a document that has no password and that nobody sees.
     *
     * @param office the office’s context
     * @param address the address of its file, or of the office’s factory for a new one
     * @return the document, to be closed by the caller
     * @throws com.sun.star.uno.Exception if it cannot be opened
     */
    public static XComponent openHidden(XComponentContext office, String address) throws com.sun.star.uno.Exception {
        return openHidden(office, address, Optional.empty());
    }

    private static XComponent openHidden(XComponentContext office, String address, Optional<String> password)
            throws com.sun.star.uno.Exception {
        List<PropertyValue> how = new ArrayList<>();
        how.add(Uno.named("Hidden", true));
        password.ifPresent(secret -> how.add(Uno.named("Password", secret)));
        XComponent opened = Uno.as(XComponentLoader.class, Uno.service(office, "com.sun.star.frame.Desktop"))
                .loadComponentFromURL(address, "_blank", 0, how.toArray(PropertyValue[]::new));
        if (opened == null) {
            throw new com.sun.star.io.IOException(address);
        }
        return opened;
    }
}
