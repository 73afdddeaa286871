package org.snugsheet.office;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.menu.MenuHandler;

/** Where the office asks for the services of this jar, named in its manifest. */
public final class Registration {

    private Registration() {}

    /**
     * The factory of a service. The odd name is the office’s.
     *
     * @param implementationName the name of the class wanted
     * @return its factory, or null if this jar has no such service
     */
    public static @Nullable XSingleComponentFactory __getComponentFactory(String implementationName) {
        if (MenuHandler.class.getName().equals(implementationName)) {
            return Factory.createComponentFactory(MenuHandler.class, new String[] {MenuHandler.SERVICE});
        }
        for (Map.Entry<String, Class<?>> service : Families.services().entrySet()) {
            if (service.getValue().getName().equals(implementationName)) {
                return Factory.createComponentFactory(service.getValue(), new String[] {service.getKey()});
            }
        }
        return null;
    }
}
