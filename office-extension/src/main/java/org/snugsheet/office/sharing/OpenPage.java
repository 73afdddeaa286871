package org.snugsheet.office.sharing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * The page at which a file opens. The office keeps it only for a document that stands in a window, which a copy in the making does
 * not; so it is added to the finished file, in the words of the office’s own view settings (.ods, .fods) and of ECMA-376, part 1,
 * 18.2.30, workbookView (.xlsx).
 *
 * @param name its name
 * @param place its place among the pages, from 0
 */
record OpenPage(String name, int place) {

    private static final Pattern SHOWN =
            Pattern.compile("(config:name=\"ActiveTable\"[^>]*>)[^<]*(</config:config-item>)");

    private static final Pattern VIEWS = Pattern.compile(
            "(<config:config-item-set config:name=\"ooo:view-settings\">)(.*?)(</config:config-item-set>)",
            Pattern.DOTALL);

    private static final Pattern WORKBOOK_VIEW = Pattern.compile("<workbookView\\b([^>]*?)(/?)>");

    /** Adds it to a file without a password. */
    void addTo(Path file) throws IOException {
        if (file.getFileName().toString().endsWith(".fods")) {
            Files.writeString(file, inSettings(Files.readString(file)));
            return;
        }
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (ZipFile from = new ZipFile(file.toFile());
                ZipOutputStream to = new ZipOutputStream(written)) {
            // In the order of the file: a reader finds its kind by the first part, which is not compressed.
            for (Enumeration<? extends ZipEntry> parts = from.entries(); parts.hasMoreElements(); ) {
                ZipEntry part = parts.nextElement();
                byte[] old = from.getInputStream(part).readAllBytes();
                byte[] content = changed(part.getName(), old);
                to.putNextEntry(content == old && part.getMethod() == ZipEntry.STORED ? stored(part) : named(part));
                to.write(content);
                to.closeEntry();
            }
        }
        Files.write(file, written.toByteArray());
    }

    private byte[] changed(String part, byte[] content) {
        return switch (part) {
            case "settings.xml" -> edited(content, this::inSettings);
            case "xl/workbook.xml" -> edited(content, this::inWorkbook);
            default -> content;
        };
    }

    private static byte[] edited(byte[] content, UnaryOperator<String> edit) {
        return edit.apply(new String(content, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
    }

    private static ZipEntry named(ZipEntry part) {
        ZipEntry again = new ZipEntry(part.getName());
        again.setTimeLocal(part.getTimeLocal());
        return again;
    }

    private static ZipEntry stored(ZipEntry part) {
        ZipEntry again = named(part);
        again.setMethod(ZipEntry.STORED);
        again.setSize(part.getSize());
        again.setCrc(part.getCrc());
        return again;
    }

    private String inSettings(String xml) {
        String escaped = name.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        Matcher shown = SHOWN.matcher(xml);
        if (shown.find()) {
            return shown.replaceFirst("$1" + Matcher.quoteReplacement(escaped) + "$2");
        }
        String view = "<config:config-item-map-indexed config:name=\"Views\"><config:config-item-map-entry>"
                + "<config:config-item config:name=\"ViewId\" config:type=\"string\">view1</config:config-item>"
                + "<config:config-item config:name=\"ActiveTable\" config:type=\"string\">" + escaped
                + "</config:config-item></config:config-item-map-entry></config:config-item-map-indexed>";
        return VIEWS.matcher(xml).replaceFirst("$1$2" + Matcher.quoteReplacement(view) + "$3");
    }

    private String inWorkbook(String xml) {
        Matcher view = WORKBOOK_VIEW.matcher(xml);
        if (!view.find()) {
            return xml;
        }
        String others = view.group(1).replaceAll("\\s(activeTab|firstSheet)=\"[^\"]*\"", "");
        return view.replaceFirst(Matcher.quoteReplacement(
                "<workbookView" + others.stripTrailing() + " activeTab=\"" + place + "\"" + view.group(2) + ">"));
    }
}
