package org.snugsheet.office.harness;

/** A kind of file that a document can be saved as. */
public enum FileFormat {
    /** OpenDocument spreadsheet. */
    ODS("ods", "calc8"),
    /** OpenDocument spreadsheet as one plain XML file. */
    FODS("fods", "OpenDocument Spreadsheet Flat XML"),
    /** Office Open XML workbook. */
    XLSX("xlsx", "Calc MS Excel 2007 XML"),
    /** The printed pages; cannot be opened again as a spreadsheet. */
    PDF("pdf", "calc_pdf_Export"),
    /** The first sheet as text in UTF-8, values separated by commas, as shown in the cells. */
    CSV("csv", "Text - txt - csv (StarCalc)");

    private final String extension;
    private final String filter;

    FileFormat(String extension, String filter) {
        this.extension = extension;
        this.filter = filter;
    }

    /** The usual end of a file's name, without the dot. */
    public String extension() {
        return extension;
    }

    /** The office's own name of the export filter. */
    String filter() {
        return filter;
    }
}
