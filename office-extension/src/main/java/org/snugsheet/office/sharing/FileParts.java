package org.snugsheet.office.sharing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/**
 * The parts of a finished file, to add to it what the office would not write, or would take long for: of an .ods or .xlsx those of
 * its package, of a .fods the file itself under the name of each part that it holds.
 */
final class FileParts {

    private final Path file;
    private final boolean isFlat;
    private final Map<String, byte[]> contents = new LinkedHashMap<>();
    private final Map<String, ZipEntry> entries = new LinkedHashMap<>();

    private FileParts(Path file) {
        this.file = file;
        this.isFlat = file.getFileName().toString().endsWith(".fods");
    }

    /** Reads a file that has no password. */
    static FileParts of(Path file) throws IOException {
        FileParts parts = new FileParts(file);
        if (parts.isFlat) {
            parts.contents.put("", Files.readAllBytes(file));
            return parts;
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                parts.contents.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
                parts.entries.put(entry.getName(), entry);
            }
        }
        return parts;
    }

    /** The parts of a package; a flat file has one without a name. */
    List<String> names() {
        return List.copyOf(contents.keySet());
    }

    /** The text of a part, if the file has it. */
    Optional<String> text(String part) {
        return Optional.ofNullable(contents.get(isFlat ? "" : part))
                .map(content -> new String(content, StandardCharsets.UTF_8));
    }

    /**
     * The XML of a part, if the file has it.
     *
     * @throws UnexpectedFileException if it is not one
     */
    Optional<Document> xml(String part) throws UnexpectedFileException {
        byte[] content = contents.get(isFlat ? "" : part);
        if (content == null) {
            return Optional.empty();
        }
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return Optional.of(factory.newDocumentBuilder().parse(new ByteArrayInputStream(content)));
        } catch (ParserConfigurationException | SAXException | IOException unread) {
            throw new UnexpectedFileException(part, unread);
        }
    }

    /** Gives a part that the file has another text. */
    void replace(String part, String text) {
        contents.replace(isFlat ? "" : part, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Gives a part that the file has other XML. */
    void replace(String part, Document xml) throws UnexpectedFileException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try {
            TransformerFactory.newDefaultInstance()
                    .newTransformer()
                    .transform(new DOMSource(xml), new StreamResult(written));
        } catch (TransformerException unwritten) {
            throw new UnexpectedFileException(part, unwritten);
        }
        contents.replace(isFlat ? "" : part, written.toByteArray());
    }

    /** Writes the file again. */
    void write() throws IOException {
        if (isFlat) {
            Files.write(file, Optional.ofNullable(contents.get("")).orElseThrow());
            return;
        }
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(written)) {
            zip.setLevel(Deflater.BEST_COMPRESSION);
            // In the order of the file: a reader finds its kind by the first part, which is not compressed.
            for (Map.Entry<String, ZipEntry> entry : entries.entrySet()) {
                byte[] content =
                        Optional.ofNullable(contents.get(entry.getKey())).orElseThrow();
                zip.putNextEntry(again(entry.getValue()));
                zip.write(content);
                zip.closeEntry();
            }
        }
        Files.write(file, written.toByteArray());
    }

    /** A part that was not compressed stays so; these are never changed here. */
    private static ZipEntry again(ZipEntry entry) {
        ZipEntry again = new ZipEntry(entry.getName());
        again.setTimeLocal(entry.getTimeLocal());
        if (entry.getMethod() == ZipEntry.STORED) {
            again.setMethod(ZipEntry.STORED);
            again.setSize(entry.getSize());
            again.setCrc(entry.getCrc());
        }
        return again;
    }
}
