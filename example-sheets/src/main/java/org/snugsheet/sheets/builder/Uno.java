package org.snugsheet.sheets.builder;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;

/** What UNO makes long-winded in Java. */
final class Uno {
    private Uno() {}

    /** The object seen through one of its interfaces. */
    static <T> T as(Class<T> type, Object object) {
        T seen = UnoRuntime.queryInterface(type, object);
        if (seen == null) {
            throw new IllegalStateException("The office handed out an object without " + type.getName());
        }
        return seen;
    }

    static Object get(Object object, String property) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, object).getPropertyValue(property);
    }

    static void set(Object object, String property, Object value) throws com.sun.star.uno.Exception {
        as(XPropertySet.class, object).setPropertyValue(property, value);
    }

    /** Makes one of the objects that belong to a document, such as a style. */
    static Object make(Object document, String service) throws com.sun.star.uno.Exception {
        return as(XMultiServiceFactory.class, document).createInstance(service);
    }

    static PropertyValue[] arguments(PropertyValue... pairs) {
        return pairs;
    }

    static PropertyValue named(String name, Object value) {
        PropertyValue pair = new PropertyValue();
        pair.Name = name;
        pair.Value = value;
        return pair;
    }
}
