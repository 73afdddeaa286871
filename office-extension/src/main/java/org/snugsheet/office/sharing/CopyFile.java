package org.snugsheet.office.sharing;

import com.sun.star.beans.NamedValue;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XNamed;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;

/** Writes a copy to share into a file; the document it is made from is not touched. */
public final class CopyFile {

    private static final System.Logger LOG = System.getLogger(CopyFile.class.getName());

    private final XComponentContext office;
    private final XSpreadsheetDocument document;
    private final String file;
    private final FileKind kind;
    private final Optional<Object> beforeChanges;

    private CopyFile(
            XComponentContext office, XSpreadsheetDocument document, String file, Optional<Object> beforeChanges) {
        this.beforeChanges = beforeChanges;
        this.office = office;
        this.document = document;
        this.file = file;
        this.kind = FileKind.of(file);
    }

    /**
     * Writes the copy.
     *
     * @param office the office’s context
     * @param document the document to copy
     * @param file the address of the file; its ending says whether .ods, .fods or .xlsx
     * @param password the password of the copy; a document that has one is not copied without
     * @param progress is told how far it is
     * @return how many formulas were replaced
     * @throws DeclinedException if the ending is another, the file is open, a password is needed, the document is such a copy itself, or the
     *     file cannot be written; what was in the file before is then still there
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int of(
            XComponentContext office,
            XSpreadsheetDocument document,
            String file,
            Optional<String> password,
            Progress progress)
            throws com.sun.star.uno.Exception {
        return of(office, document, file, password, false, progress);
    }

    /**
     * Writes the copy, with its answers only or so that it goes on working.
     *
     * @param office the office’s context
     * @param document the document to copy
     * @param file the address of the file; its ending says whether .ods, .fods or .xlsx
     * @param password the password of the copy; a document that has one is not copied without
     * @param isLiving whether the copy goes on working, as far as that is possible
     * @param progress is told how far it is
     * @return how many formulas were replaced
     * @throws DeclinedException if the ending is another, the file is open, a password is needed, the document is such a copy itself, or the
     *     file cannot be written; what was in the file before is then still there
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int of(
            XComponentContext office,
            XSpreadsheetDocument document,
            String file,
            Optional<String> password,
            boolean isLiving,
            Progress progress)
            throws com.sun.star.uno.Exception {
        check(office, document, file);
        CopyFile copy = new CopyFile(office, document, file, beforeChanges(document, FileKind.of(file)));
        if (password.isEmpty() && DocumentFile.hasPassword(document)) {
            throw new DeclinedException(SharingWords.NEEDS_A_PASSWORD);
        }
        return copy.write(password, isLiving, progress);
    }

    /**
     * Whether a copy may go into a file, before anything is asked for it.
     *
     * @param office the office’s context
     * @param document the document to copy
     * @param file the address of the file
     * @throws DeclinedException if not
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static void check(XComponentContext office, XSpreadsheetDocument document, String file)
            throws com.sun.star.uno.Exception {
        if (FileKind.of(file) == FileKind.FODS && DocumentFile.hasPassword(document)) {
            throw new DeclinedException(SharingWords.NO_PASSWORD_THERE);
        }
        beforeChanges(document, FileKind.of(file));
        XEnumeration open = Uno.as(XDesktop.class, Uno.service(office, "com.sun.star.frame.Desktop"))
                .getComponents()
                .createEnumeration();
        while (open.hasMoreElements()) {
            XModel model = UnoRuntime.queryInterface(XModel.class, open.nextElement());
            if (model != null && isSame(model.getURL(), file)) {
                throw new DeclinedException(SharingWords.IS_OPEN, DocumentFile.written(file));
            }
        }
    }

    /**
     * The password that is asked for before changes, of which the office keeps a fingerprint only: that of the files of one kind
     * cannot be made into one of the other.
     */
    private static Optional<Object> beforeChanges(XSpreadsheetDocument document, FileKind kind)
            throws com.sun.star.uno.Exception {
        Object settings = Uno.make(document, "com.sun.star.document.Settings");
        Object hash = Uno.property(settings, "ModifyPasswordHash");
        int number = hash instanceof Any typed ? ((Number) typed.getObject()).intValue() : ((Number) hash).intValue();
        PropertyValue[] parts = (PropertyValue[]) Uno.property(settings, "ModifyPasswordInfo");
        if (number == 0 && parts.length == 0) {
            return Optional.empty();
        }
        boolean isOdf = Arrays.stream(parts)
                .anyMatch(part -> part.Name.equals("algorithm-name") && "PBKDF2".equals(part.Value));
        if (isOdf == (kind == FileKind.XLSX)) {
            throw new DeclinedException(SharingWords.NOT_ASKED_BEFORE_CHANGES, kind.ending(), isOdf ? ".ods" : ".xlsx");
        }
        return Optional.of(parts.length == 0 ? (Object) number : parts);
    }

    private static boolean isSame(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        Optional<Path> first = path(one);
        Optional<Path> second = path(other);
        try {
            return first.isPresent()
                    && second.isPresent()
                    && Files.exists(first.get())
                    && Files.exists(second.get())
                    && Files.isSameFile(first.get(), second.get());
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static Optional<Path> path(String address) {
        try {
            return address.startsWith("file:") ? Optional.of(Path.of(URI.create(address))) : Optional.empty();
        } catch (IllegalArgumentException | FileSystemNotFoundException elsewhere) {
            return Optional.empty();
        }
    }

    private int write(Optional<String> password, boolean isLiving, Progress progress)
            throws com.sun.star.uno.Exception {
        XComponent copy = twin();
        try {
            // Into a locked file nothing can be added.
            ShareCopy.Made made = ShareCopy.make(
                    Uno.as(XSpreadsheetDocument.class, copy),
                    progress,
                    password.isEmpty() && path(file).isPresent(),
                    isLiving);
            if (kind == FileKind.FODS) {
                Notes.draw(Uno.as(XSpreadsheetDocument.class, copy));
            }
            store(copy, password, made, progress);
            return made.formulas();
        } finally {
            Uno.as(XCloseable.class, copy).close(true);
        }
    }

    private XComponent twin() {
        try {
            return DocumentFile.twin(office, document);
        } catch (com.sun.star.uno.Exception | IllegalStateException failed) {
            LOG.log(System.Logger.Level.WARNING, "No copy", failed);
            throw new DeclinedException(SharingWords.NOT_COPIED);
        }
    }

    /** The page that is open in the window of the document, among the pages of its copy. */
    private Optional<OpenPage> openPage(XComponent copy) {
        XController controller = Uno.as(XModel.class, document).getCurrentController();
        XSpreadsheetView view = UnoRuntime.queryInterface(XSpreadsheetView.class, controller);
        if (view == null) {
            return Optional.empty();
        }
        String name = Uno.as(XNamed.class, view.getActiveSheet()).getName();
        int place = List.of(Uno.as(XSpreadsheetDocument.class, copy).getSheets().getElementNames())
                .indexOf(name);
        return place < 0 ? Optional.empty() : Optional.of(new OpenPage(name, place));
    }

    /** Beside its place first, then into it: what is there is whole at any time, the old file or the new one. */
    private void store(XComponent copy, Optional<String> password, ShareCopy.Made made, Progress progress)
            throws com.sun.star.uno.Exception {
        Optional<Path> target = path(file);
        try {
            if (target.isEmpty()) {
                Uno.as(XStorable.class, copy).storeToURL(file, how(password, progress));
                return;
            }
            Path whole = target.get().toAbsolutePath();
            Path beside = Files.createTempFile(whole.getParent(), ".snugsheet-", kind.ending());
            try {
                Uno.as(XStorable.class, copy).storeToURL(DocumentFile.address(beside), how(password, progress));
                // A locked file can be changed by nobody, and opens at its first page.
                if (password.isEmpty() && !finish(copy, beside, made.notes(), made.steps())) {
                    for (NotesToAdd some : made.notes()) {
                        some.makeOthers(Uno.as(XSpreadsheetDocument.class, copy));
                    }
                    Uno.as(XStorable.class, copy).storeToURL(DocumentFile.address(beside), how(password, progress));
                    finish(copy, beside, List.of(), made.steps());
                }
                copyRights(whole, beside);
                Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException | com.sun.star.io.IOException failed) {
            LOG.log(System.Logger.Level.WARNING, "Not written", failed);
            throw new DeclinedException(SharingWords.NOT_WRITTEN, DocumentFile.written(file));
        }
    }

    /**
     * Adds to a stored file what it lacks yet, and takes out what it need not say.
     *
     * @return false if it is not as expected; it was not touched then
     */
    private boolean finish(XComponent copy, Path stored, List<NotesToAdd> notes, String steps) throws IOException {
        try {
            FileParts parts = FileParts.of(stored);
            NotesToAdd.add(parts, notes);
            openPage(copy).ifPresent(page -> page.addTo(parts));
            XSpreadsheetDocument document = Uno.as(XSpreadsheetDocument.class, copy);
            FixedOrder.addTo(parts, document);
            if (kind == FileKind.XLSX) {
                LeanFile.addTo(
                        parts, List.of(document.getSheets().getElementNames()).indexOf(steps));
            }
            parts.write();
            return true;
        } catch (UnexpectedFileException unknown) {
            LOG.log(System.Logger.Level.WARNING, "The office makes the notes itself", unknown);
            return false;
        }
    }

    /** A temporary file is for its owner alone; the copy is as readable as any new file. */
    private static void copyRights(Path whole, Path beside) throws IOException {
        if (!beside.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return;
        }
        if (Files.exists(whole)) {
            Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(whole));
            return;
        }
        Path like = whole.resolveSibling(".snugsheet-" + System.nanoTime());
        Files.createFile(like);
        try {
            Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(like));
        } finally {
            Files.delete(like);
        }
    }

    private PropertyValue[] how(Optional<String> password, Progress progress) {
        List<PropertyValue> how = new ArrayList<>();
        how.add(Uno.named("FilterName", kind.filter()));
        how.add(Uno.named("Overwrite", true));
        progress.bar().ifPresent(bar -> how.add(Uno.named("StatusIndicator", bar)));
        if (password.isPresent()) {
            how.add(
                    kind == FileKind.XLSX
                            ? Uno.named("EncryptionData", new NamedValue[] {
                                new NamedValue("CryptoType", "Standard"), new NamedValue("OOXPassword", password.get())
                            })
                            : Uno.named("Password", password.get()));
        }
        if (beforeChanges.isPresent()) {
            how.add(Uno.named("ModifyPasswordInfo", beforeChanges.get()));
        }
        return how.toArray(PropertyValue[]::new);
    }
}
