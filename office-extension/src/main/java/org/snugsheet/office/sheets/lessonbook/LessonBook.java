package org.snugsheet.office.sheets.lessonbook;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.lessonbook.answers.AnswersBehind;
import org.snugsheet.office.sheets.lessonbook.answers.AnswersPage;
import org.snugsheet.office.sheets.lessonbook.behind.JarsBehind;
import org.snugsheet.office.sheets.lessonbook.behind.Understood;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.notes.NotesPage;
import org.snugsheet.office.sheets.lessonbook.plan.PlanBehind;
import org.snugsheet.office.sheets.lessonbook.plan.PlanPage;
import org.snugsheet.office.sheets.lessonbook.pupils.NumbersPage;
import org.snugsheet.office.sheets.lessonbook.pupils.PaperMarks;
import org.snugsheet.office.sheets.lessonbook.pupils.PicturesPage;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.sheets.lessonbook.wall.WallPage;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.words.Language;

/**
 * One document from plan to wall: what is typed on Start and Readings makes all other pages.
 *
 * @param plan how large it is, and what it begins with
 * @param isExample whether a class has filled it already, with readings that are invented
 */
public record LessonBook(BookPlan plan, boolean isExample) implements WorkedSheet {

    /**
     * A book for a lesson.
     *
     * @param plan how large it is, and what it begins with
     * @return the book
     */
    public static LessonBook of(BookPlan plan) {
        return new LessonBook(plan, false);
    }

    /**
     * A book that a class has filled already; its readings are invented.
     *
     * @return the book
     */
    public static LessonBook example() {
        return new LessonBook(empty().plan, true);
    }

    /**
     * A book without names of wraps, for the usual lesson.
     *
     * @return the book
     */
    public static LessonBook empty() {
        int minutes = BookPlan.USUAL_MINUTES;
        return of(
                new BookPlan(BookPlan.dealt(List.of(), BookPlan.USUAL_JARS), minutes, BookPlan.usualInterval(minutes)));
    }

    @Override
    public String fileName() {
        return isExample ? "example-class" : "lesson-book";
    }

    @Override
    public Phrase menuLine() {
        return isExample ? BookWords.EXAMPLE_MENU : BookWords.MENU;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return BookWords.BEHIND_PAGE.english() + "." + new JarsRows(plan).ranking();
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page start = book.page(language.words(BookWords.START_PAGE));
        Page planned = book.page(language.words(BookWords.PLAN_PAGE));
        Page pictures = book.page(language.words(BookWords.PICTURES_PAGE));
        Page numbers = book.page(language.words(BookWords.NUMBERS_PAGE));
        Page readings = book.page(language.words(BookWords.READINGS_PAGE));
        Page answers = book.page(language.words(BookWords.ANSWERS_PAGE));
        Page wall = book.page(language.words(BookWords.WALL_PAGE));
        Page notes = book.page(language.words(BookWords.NOTES_PAGE));
        Page behind = book.page(language.words(BookWords.BEHIND_PAGE));
        StartPage first = new StartPage(start, isExample ? plan.with(ExampleClass.wraps(language)) : plan, book);
        ReadingsPage second = new ReadingsPage(readings, plan, book);
        Understood understood = new Understood(behind, plan, book);
        JarsBehind jars = new JarsBehind(behind, readings, plan, book);
        first.name();
        second.name();
        understood.write();
        jars.write();
        PlanBehind worked = new PlanBehind(behind, plan, book);
        worked.write();
        new PaperMarks(behind, book.names()).write();
        first.write();
        new PicturesPage(pictures, plan, book).write();
        new NumbersPage(numbers, plan, book).write();
        second.write();
        new PlanPage(planned, behind, worked, plan, book).write();
        new NotesPage(notes, book).write();
        String below = "A" + new JarsRows(plan).end();
        if (isExample) {
            new ExampleClass(book.setting().scale()).type(start, readings, plan);
            Invented.keep(book, behind, below, readings, second.jars());
        } else {
            behind.formula(below, "=FALSE()");
            book.names().fixed("invented", behind, below);
        }
        new AnswersBehind(behind, plan, book.names()).write();
        new AnswersPage(answers, behind, plan, book).write();
        new WallPage(wall, behind, plan, book).write();
        behind.protect();
        book.describe(
                language.words(BookWords.TITLE),
                language.words(BookWords.SUBJECT),
                language.words(BookWords.DESCRIPTION),
                language.words(BookWords.TITLE),
                language.words(BookWords.READINGS_PAGE),
                language.words(BookWords.ANSWERS_PAGE));
        book.openAt(start, StartPage.FIRST_BOX);
        book.beginAt(readings, ReadingsPage.cell(0, 0));
    }
}
