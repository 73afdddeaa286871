package org.snugsheet.office.packaging;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.menu.SetUpWords;

/**
 * A line of our menu, as the office is told of it.
 *
 * @param name what its pictures are called
 * @param position its place in the menu, as a name that sorts
 * @param address what the office calls
 * @param title its words
 * @param item what our own code does; empty for the macro
 */
record MenuLine(String name, String position, String address, Phrase title, Optional<MenuItem> item) {

    /** All of them from top to bottom; the macro is the last. */
    static List<MenuLine> all() {
        return Stream.concat(
                        Arrays.stream(MenuItem.values()).map(MenuLine::of),
                        Stream.of(
                                new MenuLine("set-up", "line9", SetUpCheck.ADDRESS, SetUpWords.LINE, Optional.empty())))
                .toList();
    }

    private static MenuLine of(MenuItem item) {
        String name = item.address().substring(MenuItem.PROTOCOL.length());
        return new MenuLine(name, item.position(), item.address(), item, Optional.of(item));
    }
}
