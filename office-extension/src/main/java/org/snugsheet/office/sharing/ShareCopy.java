package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.NameToken;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.sharing.Notes.CellKey;
import org.snugsheet.office.sharing.living.Translator;
import org.snugsheet.office.uno.ArrayFormula;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** Turns a document, already a copy of somebody’s, into one that shows the same without this extension. */
public final class ShareCopy {

    private final XSpreadsheetDocument copy;
    private final Progress progress;
    private final OfficeParser parser;
    private final Followed followed = new Followed();
    private final Map<String, XSpreadsheet> sheets = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<Integer, Optional<Area>> names = new HashMap<>();
    private final boolean toFile;
    private final LivingFormulas living;
    private final List<NotesToAdd> notes = new ArrayList<>();

    private ShareCopy(XSpreadsheetDocument copy, Progress progress, boolean toFile, LivingFormulas living)
            throws com.sun.star.uno.Exception {
        this.living = living;
        this.copy = copy;
        this.progress = progress;
        this.toFile = toFile;
        this.parser = new OfficeParser(copy);
        for (XSpreadsheet sheet : Uno.sheets(copy)) {
            String name = Uno.as(XNamed.class, sheet).getName();
            numbers.put(name, sheets.size());
            sheets.put(name, sheet);
        }
        for (XNamedRange named : DefinedNames.of(copy).values()) {
            XCellRangeReferrer referrer = UnoRuntime.queryInterface(XCellRangeReferrer.class, named);
            XCellRange cells = referrer == null ? null : referrer.getReferredCells();
            names.put(
                    ((Number) Uno.property(named, "TokenIndex")).intValue(),
                    cells == null
                            ? Optional.empty()
                            : Optional.of(Area.of(
                                    Uno.as(XCellRangeAddressable.class, cells).getRangeAddress())));
        }
    }

    /**
     * Puts the value in the place of each Snugsheet formula, and keeps the formulas.
     *
     * @param copy the document to change; the original is another one
     * @return how many formulas were replaced; 0 leaves the document as it was
     * @throws DeclinedException if it is such a copy already, or a sheet with a Snugsheet formula or the document’s structure has a password
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int make(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        return make(copy, Progress.UNSEEN, false, false).formulas();
    }

    /**
     * Puts formulas of the office in the place of each Snugsheet formula, where there are such, and the value in the place of all others.
     *
     * @param copy the document to change; the original is another one
     * @return how many formulas were replaced
     * @throws DeclinedException as {@link #make(XSpreadsheetDocument)} does
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int makeLiving(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        return make(copy, Progress.UNSEEN, false, true).formulas();
    }

    /**
     * What was made of a document.
     *
     * @param formulas how many formulas were replaced
     * @param notes notes that are yet to be added to its file
     * @param steps the name of the page of steps; empty if there is none
     */
    record Made(int formulas, List<NotesToAdd> notes, String steps) {
        Made {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The same, and tells how far it is.
     *
     * @param copy the document to change
     * @param progress is told
     * @param toFile whether many notes may be left to be added to the file
     * @param isLiving whether the copy goes on working, as far as that is possible
     * @return what was made
     * @throws com.sun.star.uno.Exception if the office fails
     */
    static Made make(XSpreadsheetDocument copy, Progress progress, boolean toFile, boolean isLiving)
            throws com.sun.star.uno.Exception {
        if (!KeptFormulas.read(copy).isEmpty()) {
            throw new DeclinedException(SharingWords.IS_A_COPY);
        }
        // With all answers, before the first is written; otherwise a formula would be worked out from its neighbors’
        // changes.
        List<KeptFormula> found = FormulaScan.of(copy);
        List<NotesToAdd> notes = new ArrayList<>();
        StringBuilder steps = new StringBuilder();
        SheetProtection.structure(copy, () -> {
            List<CallsOutsideCells.Call> leftOut = CallsOutsideCells.of(copy);
            if (!found.isEmpty() || !leftOut.isEmpty()) {
                LivingFormulas living = isLiving ? LivingFormulas.of(copy, found) : LivingFormulas.none();
                ShareCopy sharing = new ShareCopy(copy, progress, toFile, living);
                sharing.make(found, leftOut);
                notes.addAll(sharing.notes);
                steps.append(living.pageName());
            }
        });
        return new Made(found.size(), notes, steps.toString());
    }

    private void make(List<KeptFormula> found, List<CallsOutsideCells.Call> leftOut) throws com.sun.star.uno.Exception {
        List<KeptFormula> formulas = new ArrayList<>();
        Map<KeptFormula, Translator.Living> translated = new HashMap<>();
        for (KeptFormula formula : found) {
            KeptFormula followed = followed(formula, living.keeps(formula));
            Optional<Translator.Living> other = living.of(formula);
            formulas.add(other.isPresent() ? followed.goesOn() : followed);
            other.ifPresent(one -> translated.put(followed.goesOn(), one));
        }
        Map<String, List<Warning.Place>> lines = new LinkedHashMap<>();
        Set<String> pages = new LinkedHashSet<>();
        found.stream().filter(living::keeps).forEach(formula -> pages.add(formula.sheet()));
        for (XSpreadsheet sheet : Uno.sheets(copy)) {
            String name = Uno.as(XNamed.class, sheet).getName();
            // A page without a Snugsheet formula may show answers of another page, and promise that they follow.
            List<Warning.Place> places = pages.contains(name)
                    ? Warning.places(sheet, followed)
                    : isLiving() ? List.of() : Warning.promises(sheet);
            if (!places.isEmpty()) {
                lines.put(name, places);
            }
        }
        List<WarningLine> warnings = new ArrayList<>();
        for (List<Warning.Place> places : lines.values()) {
            for (Warning.Place place : places) {
                warnings.add(new WarningLine(followed.follow(place.cell()), place.before()));
            }
        }
        FollowedCells.Snapshot snapshot = FollowedCells.snapshot(copy, followed);
        BatchedChanges.change(copy, () -> {
            living.writePage(copy);
            replace(formulas, translated);
        });
        XSpreadsheet page = WorkedOutPage.add(copy);
        String pageName = Uno.as(XNamed.class, page).getName();
        Language language = DocumentLanguage.of(Uno.as(XPropertySet.class, copy));
        SharingWords stale = isLiving() ? SharingWords.STALE_LIVING : SharingWords.STALE;
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        FollowedCells.write(copy, page, snapshot);
        WorkedOutPage.fill(copy, page, formulas, leftOut, translated, living.pageName());
        Area own = new Area(0, 0, WorkedOutPage.WARNING_ROW, 0, WorkedOutPage.WARNING_ROW);
        Warning.write(page, List.of(new Warning.Place(own, "", false)), pageName, stale, language, today);
        for (Map.Entry<String, List<Warning.Place>> line : lines.entrySet()) {
            XSpreadsheet sheet = sheet(line.getKey());
            SheetProtection.change(
                    copy, sheet, () -> Warning.write(sheet, line.getValue(), pageName, stale, language, today));
        }
        // What is worked out only while the office writes the file may change how cells below it look there (7.4).
        Uno.as(XCalculatable.class, copy).calculate();
        KeptFormulas.write(copy, formulas, warnings, WorkedOutPage.fingerprint(page), living.pageName());
    }

    private boolean isLiving() {
        return !living.pageName().isEmpty();
    }

    private void replace(List<KeptFormula> formulas, Map<KeptFormula, Translator.Living> translated)
            throws com.sun.star.uno.Exception {
        Map<String, List<KeptFormula>> bySheet = new LinkedHashMap<>();
        for (KeptFormula formula : formulas) {
            bySheet.computeIfAbsent(formula.sheet(), first -> new ArrayList<>()).add(formula);
        }
        int done = 0;
        for (Map.Entry<String, List<KeptFormula>> page : bySheet.entrySet()) {
            XSpreadsheet sheet = sheet(page.getKey());
            int before = done;
            SheetProtection.change(
                    copy, sheet, () -> replace(sheet, page.getValue(), translated, before, formulas.size()));
            done += page.getValue().size();
        }
    }

    private void replace(
            XSpreadsheet sheet,
            List<KeptFormula> formulas,
            Map<KeptFormula, Translator.Living> translated,
            int before,
            int all)
            throws com.sun.star.uno.Exception {
        AnswerCells answers = new AnswerCells(Notes.of(sheet).keySet());
        for (KeptFormula formula : formulas) {
            if (formula.array()) {
                ArrayFormula.takeAway(sheet.getCellRangeByName(formula.cells()));
            }
            Optional<Translator.Living> other = Optional.ofNullable(translated.get(formula));
            if (other.isEmpty()) {
                answers.add(area(formula), formula.answers().orElseThrow());
            } else if (!formula.array()) {
                answers.add(area(formula), other.get().formula());
            }
        }
        answers.writeTo(sheet);
        for (KeptFormula formula : formulas) {
            Optional<Translator.Living> other = Optional.ofNullable(translated.get(formula));
            if (formula.array() && other.isPresent()) {
                Uno.as(XArrayFormulaRange.class, sheet.getCellRangeByName(formula.cells()))
                        .setArrayFormula(other.get().formula());
            }
        }
        note(sheet, formulas, before, all);
    }

    /** Adds each formula to the note of its cell, or makes one. */
    private void note(XSpreadsheet sheet, List<KeptFormula> formulas, int before, int all)
            throws com.sun.star.uno.Exception {
        Map<CellKey, String> fresh = new HashMap<>();
        int count = before;
        int number = 0;
        for (KeptFormula formula : formulas) {
            String typed = FunctionIndex.asTyped(formula.formula());
            CellAddress cell = area(formula).first();
            number = cell.Sheet;
            if (formula.noteBefore().isPresent()) {
                Notes.set(sheet, cell, formula.noteBefore().get() + "\n" + typed);
                progress.at(++count, all);
            } else {
                fresh.put(new CellKey(cell.Column, cell.Row), typed);
            }
        }
        NotesToAdd fewOrMany = NotesToAdd.of(number, fresh);
        if (toFile && fewOrMany.areMany()) {
            fewOrMany.makeFirst(sheet);
            notes.add(fewOrMany);
        } else {
            fewOrMany.make(sheet, done -> progress.at(before + formulas.size() - fresh.size() + done, all));
        }
    }

    private Area area(KeptFormula formula) {
        return Area.read(Optional.ofNullable(numbers.get(formula.sheet())).orElseThrow(), formula.cells())
                .orElseThrow();
    }

    /** The formula with its cells and those it works with followed. */
    private KeptFormula followed(KeptFormula formula, boolean keeps) {
        Area own = area(formula);
        List<Integer> places = new ArrayList<>();
        places.add(followed.follow(own));
        if (Harmless.beforeParsing(formula.formula()).isEmpty()) {
            for (FormulaToken part : parser.parts(formula.formula(), own.first())) {
                Optional<Area> named = Area.named(part.Data, own.first());
                named.ifPresent(area -> places.add(keeps ? followed.input(area) : followed.follow(area)));
                if (keeps && part.Data instanceof NameToken name) {
                    names.getOrDefault(name.Index, Optional.empty()).ifPresent(followed::input);
                }
            }
        }
        return formula.followedAt(places);
    }

    private XSpreadsheet sheet(String name) {
        return Optional.ofNullable(sheets.get(name)).orElseThrow();
    }
}
