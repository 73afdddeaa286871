package org.snugsheet.office.sharing;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A cell that a copy has filled with the line that warns of changed readings.
 *
 * @param place where the cell is followed, see {@link Followed}
 * @param before what stood in it; empty for nothing
 */
record WarningLine(int place, String before) {

    String written() {
        return place + "&" + URLEncoder.encode(before, StandardCharsets.UTF_8);
    }

    static Optional<WarningLine> read(String line) {
        String[] parts = line.split("&", -1);
        if (parts.length != 2) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new WarningLine(Integer.parseInt(parts[0]), URLDecoder.decode(parts[1], StandardCharsets.UTF_8)));
        } catch (IllegalArgumentException crafted) {
            return Optional.empty();
        }
    }
}
