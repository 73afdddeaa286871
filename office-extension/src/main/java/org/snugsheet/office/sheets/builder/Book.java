package org.snugsheet.office.sheets.builder;

import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XActionLockable;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XModifiable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.snugsheet.office.page.FormulaQueue;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.StyleSheet;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** A document being filled: its pages, its names, what it says about itself, and how it opens. */
public final class Book {
    private final XComponentContext office;
    private final XSpreadsheetDocument document;
    private final Setting setting;
    private final FormulaQueue formulas = new FormulaQueue();
    private final List<Page> pages = new ArrayList<>();
    private Optional<Page> firstPage = Optional.empty();
    private String firstCell = "A1";
    private final Map<Page, String> cursors = new LinkedHashMap<>();
    private boolean hasLastPage;

    private Book(XComponentContext office, XSpreadsheetDocument document, Setting setting) {
        this.office = office;
        this.document = document;
        this.setting = setting;
    }

    /**
     * Fills a document with a worked sheet. Nothing of it can be undone.
     *
     * @param office where it is filled
     * @param empty a new document of this office, with one sheet and nothing in it; closing it is left to the caller
     * @param sheet what to fill it with
     * @param setting how it is written
     * @return the document with its pages
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Book filled(XComponentContext office, XSpreadsheetDocument empty, WorkedSheet sheet, Setting setting)
            throws com.sun.star.uno.Exception {
        Book book = new Book(office, empty, setting);
        XUndoManager undo = Uno.as(XUndoManagerSupplier.class, empty).getUndoManager();
        XCalculatable cells = Uno.as(XCalculatable.class, empty);
        undo.lock();
        // A locked recorder is still handed what to record, and that takes longer than the change itself.
        Uno.set(empty, "IsUndoEnabled", false);
        // Nothing is worked out or drawn before all is there.
        cells.enableAutomaticCalculation(false);
        Uno.as(XActionLockable.class, empty).addActionLock();
        try {
            StyleSheet.install(empty);
            sheet.fill(book);
            book.formulas.write();
        } finally {
            Uno.as(XActionLockable.class, empty).removeActionLock();
            cells.enableAutomaticCalculation(true);
            Uno.set(empty, "IsUndoEnabled", true);
            undo.unlock();
            undo.clear();
        }
        return book;
    }

    /**
     * Adds a page that stays behind all others, those that are added later, too.
     *
     * @param name the name on its tab
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page lastPage(String name) throws com.sun.star.uno.Exception {
        Page page = page(name);
        hasLastPage = true;
        return page;
    }

    /**
     * Adds a page behind the others.
     *
     * @param name the name on its tab
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page page(String name) throws com.sun.star.uno.Exception {
        int place = hasLastPage ? pages.size() - 1 : pages.size();
        XSpreadsheets sheets = document.getSheets();
        if (pages.isEmpty()) {
            Object first = Uno.as(XIndexAccess.class, sheets).getByIndex(0);
            Uno.as(XNamed.class, first).setName(name);
        } else {
            sheets.insertNewByName(name, (short) place);
        }
        Page page = new Page(document, Uno.as(XSpreadsheet.class, sheets.getByName(name)), name)
                .on(setting.paper())
                .with(formulas);
        pages.add(place, page);
        return page;
    }

    /**
     * The named ranges of this document.
     *
     * @return the names
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public NamedRanges names() throws com.sun.star.uno.Exception {
        return NamedRanges.of(document);
    }

    /**
     * Says what the document is, in its properties.
     *
     * @param title its title
     * @param subject what it is about
     * @param description a few sentences
     * @param keywords words to find it by, besides the title
     */
    public void describe(String title, String subject, String description, String... keywords) {
        XDocumentProperties properties =
                Uno.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
        properties.setTitle(title);
        properties.setSubject(subject);
        properties.setDescription(description);
        properties.setKeywords(Stream.concat(Stream.of(title), Arrays.stream(keywords))
                .distinct()
                .toArray(String[]::new));
        properties.setAuthor("Snugsheet");
        properties.setLanguage(new Locale(setting.language().code(), "", ""));
    }

    /**
     * Decides what a reader sees first: this page, with the cursor in this cell, and no grid lines but those of the styles.
     *
     * @param page the page to open at
     * @param address the cell
     */
    public void openAt(Page page, String address) {
        firstPage = Optional.of(page);
        firstCell = address;
    }

    /**
     * Decides where the cursor is on a page other than the first.
     *
     * @param page the page
     * @param address the cell
     */
    public void beginAt(Page page, String address) {
        cursors.put(page, address);
    }

    /**
     * Where the cursor is on pages other than the first.
     *
     * @return the cells by their pages
     */
    public Map<Page, String> cursors() {
        return Map.copyOf(cursors);
    }

    /**
     * Changes the paper of all pages.
     *
     * @param paper what is in the printer
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void printOn(Paper paper) throws com.sun.star.uno.Exception {
        PrintSetup.printOn(paper, document);
    }

    /**
     * Works out what is not worked out yet, so that what is saved next or a chart that is drawn next shows the results.
     *
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void calculate() throws com.sun.star.uno.Exception {
        formulas.write();
        Uno.as(XCalculatable.class, document).calculate();
    }

    /**
     * Lets it count as unchanged: whoever closes it at once is not asked to save it. The office asks each chart, too.
     *
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void setUnchanged() throws com.sun.star.uno.Exception {
        for (Page page : pages) {
            XTableCharts charts =
                    Uno.as(XTableChartsSupplier.class, page.sheet()).getCharts();
            for (String name : charts.getElementNames()) {
                Object chart = Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(name))
                        .getEmbeddedObject();
                Uno.as(XModifiable.class, chart).setModified(false);
            }
        }
        Uno.as(XModifiable.class, document).setModified(false);
    }

    /**
     * What a reader sees first.
     *
     * @return the page to open at
     */
    public Page firstPage() {
        return firstPage.orElseGet(() -> pages.get(0));
    }

    /**
     * Where the cursor is at first.
     *
     * @return a cell of that page
     */
    public String firstCell() {
        return firstCell;
    }

    /**
     * Its pages.
     *
     * @return the pages in their order
     */
    public List<Page> pages() {
        return List.copyOf(pages);
    }

    /**
     * How it is written.
     *
     * @return language, scale and paper
     */
    public Setting setting() {
        return setting;
    }

    /**
     * The language of its words.
     *
     * @return the language
     */
    public Language language() {
        return setting.language();
    }

    /**
     * The office in which it is filled.
     *
     * @return the office’s context
     */
    public XComponentContext office() {
        return office;
    }
}
