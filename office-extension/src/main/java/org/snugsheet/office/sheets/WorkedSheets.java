package org.snugsheet.office.sheets;

import java.util.List;
import java.util.Optional;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.designawrap.DesignAWrap;
import org.snugsheet.office.sheets.firstfiveminutes.FirstFiveMinutes;
import org.snugsheet.office.sheets.lessonbook.LessonBook;
import org.snugsheet.office.sheets.onejar.OneJarOneCurve;
import org.snugsheet.office.sheets.weatherdiary.WeatherDiary;
import org.snugsheet.office.sheets.wintercoats.WinterCoats;

/** All worked sheets, in the order in which a teacher meets them. */
public final class WorkedSheets {

    private static final List<WorkedSheet> ALL = List.of(
            LessonBook.empty(),
            LessonBook.example(),
            new FirstFiveMinutes(),
            new OneJarOneCurve(),
            new DesignAWrap(),
            new WinterCoats(),
            new WeatherDiary());

    private WorkedSheets() {}

    /**
     * All of them.
     *
     * @return the sheets in their order
     */
    public static List<WorkedSheet> all() {
        return ALL;
    }

    /**
     * Those with a line of their own below “Worked sheets” in the menu: the lesson book has one above them.
     *
     * @return the sheets in their order
     */
    public static List<WorkedSheet> listed() {
        return ALL.subList(1, ALL.size());
    }

    /**
     * One of them.
     *
     * @param name such as {@code weather-diary}
     * @return the sheet, if there is one of that name
     */
    public static Optional<WorkedSheet> named(String name) {
        return ALL.stream().filter(sheet -> sheet.fileName().equals(name)).findFirst();
    }
}
