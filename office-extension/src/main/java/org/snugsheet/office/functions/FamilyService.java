package org.snugsheet.office.functions;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import org.snugsheet.office.declare.Family;

/** What every family’s class needs to be a service of the office. */
abstract class FamilyService extends WeakBase implements XServiceInfo {

    private final String service;

    FamilyService(Class<?> family) {
        this.service = family.getAnnotation(Family.class).service();
    }

    @Override
    public String getImplementationName() {
        return getClass().getName();
    }

    @Override
    public boolean supportsService(String name) {
        return service.equals(name);
    }

    @Override
    public String[] getSupportedServiceNames() {
        return new String[] {service};
    }
}
