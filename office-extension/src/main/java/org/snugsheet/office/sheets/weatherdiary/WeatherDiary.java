package org.snugsheet.office.sheets.weatherdiary;

import java.util.EnumSet;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.words.Language;

/**
 * A month of school days: sky, temperatures, wind and clothes, each typed once; what they tell, counted, drawn and in sentences; and a
 * page on which children color the same graph by hand. Days off and readings left out are gaps, never zeros.
 */
public final class WeatherDiary implements WorkedSheet {

    /** As many as a month has at most from Monday to Friday. */
    static final int DAYS = 23;

    static final int FIRST_ROW = 12;
    static final int LAST_ROW = FIRST_ROW + DAYS - 1;

    @Override
    public String fileName() {
        return "weather-diary";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.DIARY;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return DiaryWords.FOUND_PAGE.english() + ".A4:C10";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page diary = book.page(language.words(DiaryWords.DIARY_PAGE));
        Page found = book.page(language.words(DiaryWords.FOUND_PAGE));
        Page color = book.page(language.words(DiaryWords.COLOR_PAGE));
        Page behind = book.page(language.words(DiaryWords.BEHIND_PAGE));
        BehindTheDiary calculated = new BehindTheDiary(behind, diary, language);
        calculated.writeLists(book.names());
        new DiaryPage(diary, calculated, book).write();
        calculated.writeDays();
        new FoundPage(found, calculated, book).write();
        new ColoringPage(color, language).write();
        calculated.finish();
        book.describe(
                language.words(DiaryWords.TITLE),
                language.words(DiaryWords.PURPOSE),
                language.words(DiaryWords.DESCRIPTION),
                language.words(DiaryWords.TITLE),
                language.words(DiaryWords.WARMTH),
                language.words(DiaryWords.KINDS));
        book.openAt(diary, DiaryPage.FIRST_DAY);
    }
}
