package org.snugsheet.office.harness;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.FunctionArgument;
import com.sun.star.sheet.XFunctionDescriptions;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the function wizard of the office shows for each function.
 *
 * @param functions in the office's order
 */
public record FunctionWizard(List<Function> functions) {
    /** The headings, in the office's order: it counts them from 1. Unlike its published list, it has one for arrays. */
    public enum Category {
        DATABASE,
        DATE_AND_TIME,
        FINANCIAL,
        INFORMATION,
        LOGICAL,
        MATHEMATICAL,
        ARRAY,
        STATISTICAL,
        SPREADSHEET,
        TEXT,
        ADD_IN
    }

    /**
     * One function.
     *
     * @param name as shown and typed
     * @param category the heading it is listed under
     */
    public record Function(String name, Category category, String description, List<Argument> arguments) {}

    /**
     * One argument of a function.
     *
     * @param optional whether it may be left out
     */
    public record Argument(String name, String description, boolean optional) {}

    /** The function of this name, in capitals or not. */
    public Optional<Function> find(String name) {
        return functions.stream()
                .filter(one -> one.name().equalsIgnoreCase(name))
                .findFirst();
    }

    static FunctionWizard of(Office office) {
        XFunctionDescriptions all =
                office.service("com.sun.star.sheet.FunctionDescriptions", XFunctionDescriptions.class);
        return office.call("reading the function wizard", () -> {
            Function[] functions = new Function[all.getCount()];
            for (int i = 0; i < functions.length; i++) {
                functions[i] = function((PropertyValue[]) all.getByIndex(i));
            }
            return new FunctionWizard(List.of(functions));
        });
    }

    private static Function function(PropertyValue[] properties) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (PropertyValue one : properties) {
            values.put(one.Name, one.Value);
        }
        return new Function(
                String.valueOf(values.get("Name")),
                category(values.get("Category")),
                values.get("Description") instanceof String text ? text : "",
                values.get("Arguments") instanceof FunctionArgument[] arguments
                        ? Arrays.stream(arguments)
                                .map(one -> new Argument(one.Name, one.Description, one.IsOptional))
                                .toList()
                        : List.of());
    }

    private static Category category(@Nullable Object number) {
        Category[] all = Category.values();
        if (number instanceof Integer place && place >= 1 && place <= all.length) {
            return all[place - 1];
        }
        throw new OfficeFailure("The office has a heading for functions that is not known here: " + number);
    }
}
