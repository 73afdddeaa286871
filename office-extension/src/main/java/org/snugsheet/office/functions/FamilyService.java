package org.snugsheet.office.functions;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import java.util.List;
import org.snugsheet.office.declare.Family;

/**
 * A service of the office: a class that implements the interfaces of a family, in the order of the reference, and adds nothing, for
 * they hold the answers.
 */
abstract class FamilyService extends WeakBase implements XServiceInfo {

    /** The interfaces that a service answers through, in the order in which it names them. */
    static List<Class<?>> families(Class<? extends FamilyService> service) {
        return List.of(service.getInterfaces());
    }

    /** The name of a service, which its interfaces share. */
    static String name(Class<? extends FamilyService> service) {
        return families(service).get(0).getAnnotation(Family.class).service();
    }

    @Override
    public String getImplementationName() {
        return getClass().getName();
    }

    @Override
    public boolean supportsService(String name) {
        return name(getClass()).equals(name);
    }

    @Override
    public String[] getSupportedServiceNames() {
        return new String[] {name(getClass())};
    }
}
