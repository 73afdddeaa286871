package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The formats of an .xlsx’s cells, as far as they are seen in a cell that holds nothing: lines around it, and what it is filled with. */
public final class CellFormats {

    /** A file without formats. */
    public static final CellFormats NONE = new CellFormats(Map.of());

    private static final Pattern BORDER = Pattern.compile("<border(?: [^>]*)?(?:/>|>.*?</border>)", Pattern.DOTALL);
    private static final Pattern LINE = Pattern.compile(
            "<(?<side>left|right|top|bottom)(?<style> style=[^>]*?)(?:/>|>(?<color>.*?)</\\k<side>>)", Pattern.DOTALL);
    private static final Pattern SLANTED = Pattern.compile("diagonal(?:Up|Down)=\"(?:true|1)\"");
    private static final Pattern FORMATS = Pattern.compile("<cellXfs .*?</cellXfs>", Pattern.DOTALL);
    private static final Pattern FORMAT = Pattern.compile("<xf [^>]*?(?:/>|>.*?</xf>)", Pattern.DOTALL);
    private static final Pattern BORDER_NUMBER = Pattern.compile(" borderId=\"(\\d+)\"");
    private static final Pattern LETTERS = Pattern.compile(" (?:numFmtId|fontId)=\"\\d+\"");
    private static final Pattern FILLED = Pattern.compile(" fillId=\"(?!0\")");

    private final Map<String, Format> formats;

    private CellFormats(Map<String, Format> formats) {
        this.formats = formats;
    }

    /** The lines by their sides, and what else can be seen or done. */
    private record Format(
            Map<String, String> lines, boolean isSlanted, boolean isFilled, boolean isUnlocked, String letters) {}

    /**
     * Reads them.
     *
     * @param styles the styles of the file
     * @return its formats
     */
    public static CellFormats of(String styles) {
        List<String> borders = new ArrayList<>();
        Matcher border = BORDER.matcher(styles);
        while (border.find()) {
            borders.add(border.group());
        }
        Map<String, Format> formats = new HashMap<>();
        Matcher all = FORMATS.matcher(styles);
        if (all.find()) {
            Matcher format = FORMAT.matcher(all.group());
            for (int number = 0; format.find(); number++) {
                Matcher lines = BORDER_NUMBER.matcher(format.group());
                int drawn = lines.find() ? Integer.parseInt(lines.group(1)) : 0;
                if (drawn < borders.size()) {
                    formats.put(String.valueOf(number), format(borders.get(drawn), format.group()));
                }
            }
        }
        return new CellFormats(formats);
    }

    private static Format format(String border, String format) {
        StringBuilder letters = new StringBuilder();
        Matcher each = LETTERS.matcher(format);
        while (each.find()) {
            letters.append(each.group());
        }
        Map<String, String> lines = new HashMap<>();
        Matcher line = LINE.matcher(border);
        while (line.find()) {
            lines.put(line.group("side"), line.group("style") + line.group("color"));
        }
        return new Format(
                lines,
                SLANTED.matcher(border).find(),
                FILLED.matcher(format).find(),
                format.contains("locked=\"false\""),
                letters.toString());
    }

    /** Whether a locked cell has no lines. */
    boolean hasNoLines(String number) {
        Format format = formats.get(number);
        return format != null && format.lines().isEmpty() && !format.isSlanted() && !format.isUnlocked();
    }

    /** Whether a locked cell is not filled either. */
    boolean isUnseen(String number) {
        Format format = formats.get(number);
        return format != null && hasNoLines(number) && !format.isFilled();
    }

    /** Whether nothing of a locked cell is seen but the lines at its sides, and what is written there looks as in any other cell. */
    boolean isOnlyLines(String number) {
        Format format = formats.get(number);
        Format first = formats.get("0");
        return format != null
                && first != null
                && !format.isSlanted()
                && !format.isFilled()
                && !format.isUnlocked()
                && format.letters().equals(first.letters());
    }

    /** The line at a side, {@code left} say; an empty text if there is none. */
    String line(String number, String side) {
        Format format = formats.get(number);
        return format == null ? "" : format.lines().getOrDefault(side, "");
    }
}
