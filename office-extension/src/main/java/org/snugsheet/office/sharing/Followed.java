package org.snugsheet.office.sharing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The cells that a copy follows: those of each formula and those it works with. A formula of the office on the page of the copy
 * names each of them, so that any office moves that name along when rows come and go, and compares what was typed with what it
 * was when the copy was made.
 */
final class Followed {

    private final Map<Area, Integer> places = new LinkedHashMap<>();
    private final Set<Area> inputs = new LinkedHashSet<>();

    /**
     * Follows an area.
     *
     * @return its number, from 1
     */
    int follow(Area area) {
        return places.computeIfAbsent(area, added -> places.size() + 1);
    }

    /** Follows an area that answers depend on. */
    int input(Area area) {
        inputs.add(area);
        return follow(area);
    }

    /** All areas in the order of their numbers. */
    List<Area> all() {
        return List.copyOf(places.keySet());
    }

    /** The areas to compare: those that lie in another one are compared with that. */
    List<Area> compared() {
        List<Area> bySize = new ArrayList<>(inputs);
        bySize.sort(Comparator.comparingLong(Area::cells).reversed());
        List<Area> compared = new ArrayList<>();
        for (Area area : bySize) {
            if (compared.stream().noneMatch(larger -> larger.holds(area))) {
                compared.add(area);
            }
        }
        return compared;
    }

    boolean isInput(Area area) {
        return inputs.stream().anyMatch(input -> input.meets(area));
    }
}
