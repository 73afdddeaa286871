package org.snugsheet.office.packaging;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.menu.SetUpWords;

/**
 * A line of the menu, as the office is told of it. Its pictures are files in {@code src/main/oxt/icons/menu}.
 *
 * @param name the beginning of its pictures’ names
 * @param position its place in the menu, as a name that sorts
 * @param address what the office calls
 * @param title its words
 * @param item what our own code does; empty for the macro
 */
record MenuLine(String name, String position, String address, Phrase title, Optional<MenuItem> item) {

    /** Sizes in pixels that the office asks for: in menus, and large. */
    static final List<Integer> PICTURE_SIZES = List.of(16, 26);

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

    /**
     * Where its picture is in the extension. The office takes one picture for light menus and for dark ones, and another one for high
     * contrast.
     */
    String picture(int size, boolean highContrast) {
        return "icons/menu/" + name + "_" + size + (highContrast ? "h" : "") + ".png";
    }
}
