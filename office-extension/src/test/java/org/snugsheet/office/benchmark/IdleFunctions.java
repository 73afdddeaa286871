package org.snugsheet.office.benchmark;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import com.sun.star.lib.uno.helper.WeakBase;
import org.jspecify.annotations.Nullable;

/** The class behind {@link Idle}, and where the office asks for it. */
public final class IdleFunctions extends WeakBase implements XServiceInfo, Idle {

    /** For the office. */
    public IdleFunctions() {}

    /** The factory of the service. The odd name is the office’s. */
    public static @Nullable XSingleComponentFactory __getComponentFactory(String implementationName) {
        return IdleFunctions.class.getName().equals(implementationName)
                ? Factory.createComponentFactory(IdleFunctions.class, new String[] {SERVICE})
                : null;
    }

    @Override
    public String getImplementationName() {
        return getClass().getName();
    }

    @Override
    public boolean supportsService(String name) {
        return SERVICE.equals(name);
    }

    @Override
    public String[] getSupportedServiceNames() {
        return new String[] {SERVICE};
    }
}
