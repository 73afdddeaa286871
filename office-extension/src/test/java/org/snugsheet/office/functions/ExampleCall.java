package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.declare.FunctionDeclaration;

/**
 * The declared example of a function, taken apart so that an argument can be typed in another way.
 *
 * @param function the function
 * @param typed what is typed for each argument; an empty text for one that is left out
 */
record ExampleCall(FunctionDeclaration function, List<String> typed) {

    static ExampleCall of(FunctionDeclaration function) {
        String example = function.function().example();
        List<String> typed = new ArrayList<>();
        String list = example.substring(example.indexOf('(') + 1, example.lastIndexOf(')'));
        StringBuilder one = new StringBuilder();
        boolean inArray = false;
        for (int i = 0; i < list.length(); i++) {
            char letter = list.charAt(i);
            inArray = letter == '{' || (inArray && letter != '}');
            if (letter == ';' && !inArray) {
                typed.add(one.toString());
                one.setLength(0);
            } else {
                one.append(letter);
            }
        }
        if (!list.isEmpty()) {
            typed.add(one.toString());
        }
        while (typed.size() < function.arguments().size()) {
            typed.add("");
        }
        return new ExampleCall(function, typed);
    }

    ExampleCall with(int argument, String otherwise) {
        List<String> others = new ArrayList<>(typed);
        others.set(argument, otherwise);
        return new ExampleCall(function, others);
    }

    /** Where an argument of a name is; -1 if there is none. */
    int indexOf(String name) {
        for (int i = 0; i < function.arguments().size(); i++) {
            if (function.arguments().get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    String formula() {
        return function.name() + "(" + String.join(";", typed) + ")";
    }
}
