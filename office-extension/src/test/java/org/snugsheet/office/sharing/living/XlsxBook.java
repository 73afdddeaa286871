package org.snugsheet.office.sharing.living;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.snugsheet.office.uno.CellName;

/**
 * Pages as an {@code .xlsx} by ECMA-376, written without the office and without Apache POI. No formula has a value in it, so that nothing can be
 * taken for worked out which a program has not worked out itself.
 */
final class XlsxBook {

    private static final String PROLOG = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKED = "http://schemas.openxmlformats.org/package/2006/";
    private static final String KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private final List<StepsPage> pages = new ArrayList<>();

    void add(StepsPage page) {
        pages.add(page);
    }

    void write(Path file) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file));
                Writer out = new OutputStreamWriter(zip, StandardCharsets.UTF_8)) {
            part(zip, out, "[Content_Types].xml", types());
            part(
                    zip,
                    out,
                    "_rels/.rels",
                    "<Relationships xmlns=\"" + PACKED + "relationships\">"
                            + relation(1, "officeDocument", "xl/workbook.xml") + "</Relationships>");
            part(zip, out, "xl/workbook.xml", workbook());
            part(zip, out, "xl/_rels/workbook.xml.rels", relations());
            for (int i = 0; i < pages.size(); i++) {
                part(zip, out, "xl/worksheets/sheet" + (i + 1) + ".xml", sheet(pages.get(i)));
            }
        }
    }

    private static void part(ZipOutputStream zip, Writer out, String name, String content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        out.write(PROLOG);
        out.write(content);
        out.flush();
        zip.closeEntry();
    }

    private String types() {
        StringBuilder types = new StringBuilder("<Types xmlns=\"" + PACKED + "content-types\">"
                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + KIND + "sheet.main+xml\"/>");
        for (int i = 1; i <= pages.size(); i++) {
            types.append("<Override PartName=\"/xl/worksheets/sheet" + i + ".xml\" ContentType=\"" + KIND
                    + "worksheet+xml\"/>");
        }
        return types.append("</Types>").toString();
    }

    private String workbook() {
        StringBuilder book =
                new StringBuilder("<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets>");
        for (int i = 1; i <= pages.size(); i++) {
            String name = escaped(pages.get(i - 1).name());
            book.append("<sheet name=\"" + name + "\" sheetId=\"" + i + "\" r:id=\"rId" + i + "\"/>");
        }
        return book.append("</sheets></workbook>").toString();
    }

    private String relations() {
        StringBuilder all = new StringBuilder("<Relationships xmlns=\"" + PACKED + "relationships\">");
        for (int i = 1; i <= pages.size(); i++) {
            all.append(relation(i, "worksheet", "worksheets/sheet" + i + ".xml"));
        }
        return all.append("</Relationships>").toString();
    }

    private static String relation(int id, String type, String target) {
        return "<Relationship Id=\"rId" + id + "\" Type=\"" + RELATIONS + "/" + type + "\" Target=\"" + target + "\"/>";
    }

    private static String sheet(StepsPage page) {
        StringBuilder sheet = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
        page.rows().forEach((row, cells) -> {
            sheet.append("<row r=\"" + (row + 1) + "\">");
            cells.forEach((column, content) -> sheet.append(cell(CellName.of(column, row), content)));
            sheet.append("</row>");
        });
        return sheet.append("</sheetData></worksheet>").toString();
    }

    private static String cell(String address, Object content) {
        String text = String.valueOf(content);
        if (content instanceof Number) {
            return "<c r=\"" + address + "\"><v>" + text + "</v></c>";
        }
        if (text.startsWith("=")) {
            return "<c r=\"" + address + "\"><f>" + escaped(notation(text.substring(1))) + "</f></c>";
        }
        return "<c r=\"" + address + "\" t=\"inlineStr\"><is><t xml:space=\"preserve\">" + escaped(text)
                + "</t></is></c>";
    }

    /** The office separates arguments by semicolons and names a sheet with a point behind it. */
    static String notation(String formula) {
        StringBuilder out = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < formula.length(); i++) {
            char c = formula.charAt(i);
            quoted ^= c == '"';
            boolean isBeforeSheet = c == '$' && i + 1 < formula.length() && formula.charAt(i + 1) == '\'';
            boolean isBehindSheet = c == '.' && i > 0 && formula.charAt(i - 1) == '\'';
            if (quoted) {
                out.append(c);
            } else if (c == ';') {
                out.append(',');
            } else if (isBehindSheet) {
                out.append('!');
            } else if (!isBeforeSheet) {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
