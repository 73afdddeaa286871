package org.snugsheet.sheets.builder;

import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.uno.XComponentContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.StyleSheet;
import org.snugsheet.office.uno.Uno;

/** A document being filled: its pages, its names, what it says about itself, and how it opens. */
public final class Book {
    private final XComponentContext office;
    private final XSpreadsheetDocument document;
    private final List<Page> pages = new ArrayList<>();
    private Optional<FirstView> firstView = Optional.empty();
    private boolean hasLastPage;

    private Book(XComponentContext office, XSpreadsheetDocument document) {
        this.office = office;
        this.document = document;
    }

    /**
     * Begins a book.
     *
     * @param office the office’s context
     * @param empty a new document of this office, with one sheet and nothing in it
     * @return the book, with all cell styles and no page yet
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Book in(XComponentContext office, XSpreadsheetDocument empty) throws com.sun.star.uno.Exception {
        StyleSheet.install(empty);
        return new Book(office, empty);
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
        Page page = new Page(document, Uno.as(XSpreadsheet.class, sheets.getByName(name)), name);
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
     * @param keywords words to find it by
     */
    public void describe(String title, String subject, String description, String... keywords) {
        XDocumentProperties properties =
                Uno.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
        properties.setTitle(title);
        properties.setSubject(subject);
        properties.setDescription(description);
        properties.setKeywords(keywords);
        properties.setAuthor("Snugsheet");
        properties.setLanguage(new Locale("en", "", ""));
    }

    /**
     * Decides what a reader sees first: this page, with the cursor in this cell, and no grid lines but those of the styles.
     *
     * @param page the page to open at
     * @param address the cell
     */
    public void openAt(Page page, String address) {
        firstView = Optional.of(new FirstView(pages, page, address));
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

    /** Calculates everything, so that what is saved next shows the results. */
    public void calculate() {
        Uno.as(XCalculatable.class, document).calculateAll();
    }

    /**
     * Adds to a saved file what a reader sees first, which the office does not save without a window.
     *
     * @param ods this document as saved in an .ods file that is not open
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void addFirstViewTo(Path ods) throws com.sun.star.uno.Exception {
        if (firstView.isPresent()) {
            firstView.get().addTo(ods, office);
        }
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
