package org.snugsheet.office.harness;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.UnoRuntime;

/** Shorthand for what UNO makes long-winded in Java; what fails here is a failure of the office under test. */
final class UnoObjects {
    private UnoObjects() {}

    /** The object seen through one of its interfaces. */
    static <T> T as(Class<T> type, Object object) {
        T seen = UnoRuntime.queryInterface(type, object);
        if (seen == null) {
            throw new OfficeFailure("The office handed out an object without " + type.getName());
        }
        return seen;
    }

    static Object property(Object object, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, object).getPropertyValue(name);
    }

    static PropertyValue argument(String name, Object value) {
        PropertyValue argument = new PropertyValue();
        argument.Name = name;
        argument.Value = value;
        return argument;
    }
}
