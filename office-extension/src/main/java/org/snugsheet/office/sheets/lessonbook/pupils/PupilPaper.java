package org.snugsheet.office.sheets.lessonbook.pupils;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * One sheet of paper of a group on a page that has one for each; rows are counted from its first, columns from 0.
 *
 * @param page the page
 * @param language the language of its words
 * @param jar the jar of the group, counted from 0
 * @param rows how many rows each sheet of paper has
 * @param columns how many columns
 */
record PupilPaper(Page page, Language language, int jar, int rows, int columns) {

    /** As wide as fits within the margins of A4, in millimeters. */
    static final double WIDTH = 189;

    /** As high as fits within the margins of US Letter, above the line that pages for adults have at the bottom. */
    static final double HEIGHT = 248;

    /** The scale of the thermometer of this jar. */
    String ownScale() {
        return "INDEX(own_scales;" + (jar + 1) + ")";
    }

    /** A number beside the thermometers of this jar, from 1, the coldest. */
    String mark(int number) {
        return "INDEX(" + PaperMarks.MARK_NAME + ";" + number + ";IF(" + ownScale() + "=\"F\";2;1))";
    }

    /** The first row, as the office counts. */
    private int row(int row) {
        return jar * rows + row;
    }

    String cell(int column, int row) {
        return CellName.of(column, row(row));
    }

    String cells(int from, int to, int row) {
        return cells(from, to, row, row);
    }

    String cells(int from, int to, int firstRow, int lastRow) {
        return cell(from, firstRow) + ":" + cell(to, lastRow);
    }

    PupilPaper high(int row, double millimeters) throws com.sun.star.uno.Exception {
        page.height(cell(0, row), millimeters);
        return this;
    }

    PupilPaper high(int first, int last, double millimeters) throws com.sun.star.uno.Exception {
        page.height(cells(0, 0, first, last), millimeters);
        return this;
    }

    /** Makes one cell of several in a row. */
    PupilPaper words(int from, int to, int row, CellStyleName look, Phrase words) throws com.sun.star.uno.Exception {
        merged(from, to, row, look);
        page.text(cell(from, row), language.words(words));
        return this;
    }

    PupilPaper merged(int from, int to, int row, CellStyleName look) throws com.sun.star.uno.Exception {
        page.look(cells(from, to, row), look).merge(cells(from, to, row));
        return this;
    }

    /** Room for the group and its wrap, large, and below it a line for a name. */
    PupilPaper top(int nameColumns) throws com.sun.star.uno.Exception {
        int last = columns - 1;
        merged(0, last, 0, CellStyleName.CHILD_TITLE);
        words(0, nameColumns - 1, 1, CellStyleName.CHILD, PupilWords.NAME);
        return merged(nameColumns, last, 1, CellStyleName.PENCIL_LINE);
    }

    /** The group and its wrap, on a sheet of paper of its own. */
    void group() throws com.sun.star.uno.Exception {
        if (jar > 0) {
            page.newPaperAt(cell(0, 0));
        }
        String wrap = "INDEX(wraps;" + (jar + 1) + ")";
        page.formula(
                cell(0, 0),
                "=IF(" + wrap + "=\"\";" + FormulaText.quoted(language.say(PupilWords.GROUP, jar + 1)) + ";"
                        + FormulaText.sentence(
                                language, PupilWords.GROUP_WRAP, FormulaText.quoted(String.valueOf(jar + 1)), wrap)
                        + ")");
    }

    /** The upper left corner of a cell, in millimeters. */
    double[] corner(int column, int row) throws com.sun.star.uno.Exception {
        return CellFrame.corner(page, cell(column, row));
    }
}
