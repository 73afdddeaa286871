package org.snugsheet.office.uno;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XMultiPropertySet;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** What every step on a document needs of the office’s interfaces. */
public final class Uno {

    private Uno() {}

    /**
     * The same object by another of its interfaces.
     *
     * @param <T> the interface
     * @param wanted the interface
     * @param object the object
     * @return the object
     * @throws IllegalStateException if it has no such interface, which is a fault of this project
     */
    public static <T> T as(Class<T> wanted, Object object) {
        T found = UnoRuntime.queryInterface(wanted, object);
        if (found == null) {
            throw new IllegalStateException("no " + wanted.getSimpleName());
        }
        return found;
    }

    /**
     * The sheets of a document.
     *
     * @param document the document
     * @return its sheets from left to right
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static List<XSpreadsheet> sheets(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XIndexAccess all = as(XIndexAccess.class, document.getSheets());
        List<XSpreadsheet> sheets = new ArrayList<>();
        for (int i = 0; i < all.getCount(); i++) {
            sheets.add(as(XSpreadsheet.class, all.getByIndex(i)));
        }
        return sheets;
    }

    /**
     * One property of an object.
     *
     * @param of the object
     * @param name the property’s name
     * @return its value
     * @throws com.sun.star.uno.Exception if there is no such property
     */
    public static Object property(Object of, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, of).getPropertyValue(name);
    }

    /**
     * Sets one property of an object.
     *
     * @param of the object
     * @param name the property’s name
     * @param value its value
     * @throws com.sun.star.uno.Exception if there is no such property, or it cannot have this value
     */
    public static void set(Object of, String name, Object value) throws com.sun.star.uno.Exception {
        as(XPropertySet.class, of).setPropertyValue(name, value);
    }

    /**
     * Makes one of the objects that belong to another, such as a style of a document or a field of a dialog.
     *
     * @param owner the document or dialog
     * @param service the service’s full name
     * @return the object
     * @throws com.sun.star.uno.Exception if it cannot be made
     */
    public static Object make(Object owner, String service) throws com.sun.star.uno.Exception {
        return as(XMultiServiceFactory.class, owner).createInstance(service);
    }

    /**
     * One of the office’s own services.
     *
     * @param office its context
     * @param service the service’s full name
     * @return the service
     * @throws com.sun.star.uno.Exception if it cannot be made
     */
    public static Object service(XComponentContext office, String service) throws com.sun.star.uno.Exception {
        return office.getServiceManager().createInstanceWithContext(service, office);
    }

    /**
     * A value with its name.
     *
     * @param name the name
     * @param value the value
     * @return both
     */
    public static PropertyValue named(String name, Object value) {
        PropertyValue pair = new PropertyValue();
        pair.Name = name;
        pair.Value = value;
        return pair;
    }

    /**
     * Sets several properties in one call, which is much quicker than one by one.
     *
     * @param object an object with properties
     * @param values the properties by their names
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void setAll(Object object, Map<String, Object> values) throws com.sun.star.uno.Exception {
        // The office wants the names in their order.
        SortedMap<String, Object> sorted = new TreeMap<>(values);
        as(XMultiPropertySet.class, object)
                .setPropertyValues(
                        sorted.keySet().toArray(String[]::new), sorted.values().toArray());
    }
}
