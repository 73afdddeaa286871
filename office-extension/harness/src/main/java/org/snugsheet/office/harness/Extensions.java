package org.snugsheet.office.harness;

import com.sun.star.beans.NamedValue;
import com.sun.star.beans.Optional;
import com.sun.star.deployment.ExtensionManager;
import com.sun.star.deployment.XExtensionManager;
import com.sun.star.deployment.XPackage;
import com.sun.star.task.XInteractionApprove;
import com.sun.star.task.XInteractionContinuation;
import com.sun.star.task.XInteractionHandler;
import com.sun.star.task.XInteractionRequest;
import com.sun.star.ucb.XCommandEnvironment;
import com.sun.star.ucb.XProgressHandler;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a user does in the Extension Manager of a running office, for this user alone.
 *
 * <p>The office takes all of it in at its next start: see {@link Office#restart()}.
 */
public final class Extensions {
    private static final String REPOSITORY = "user";

    private final Office office;

    Extensions(Office office) {
        this.office = office;
    }

    /** Adds a packed extension, or puts it in the place of another version of it; all questions are answered by yes. */
    public void add(Path oxt) {
        office.call("adding " + oxt, () -> {
            NamedValue[] quietly = {new NamedValue("SUPPRESS_LICENSE", "1")};
            return manager().addExtension(Workspace.url(oxt.toAbsolutePath()), quietly, REPOSITORY, null, new Yes());
        });
    }

    /** Takes an extension away. */
    public void remove(String identifier) {
        office.call("removing " + identifier, () -> {
            manager().removeExtension(identifier, theOne(identifier).getName(), REPOSITORY, null, new Yes());
            return identifier;
        });
    }

    /** Lets an extension rest, or wakes it. */
    public void enable(String identifier, boolean enabled) {
        office.call((enabled ? "enabling " : "disabling ") + identifier, () -> {
            if (enabled) {
                manager().enableExtension(theOne(identifier), null, new Yes());
            } else {
                manager().disableExtension(theOne(identifier), null, new Yes());
            }
            return identifier;
        });
    }

    /** All versions of an extension that are there, of this user or of all users. */
    public List<XPackage> named(String identifier) {
        return office.call(
                "looking for " + identifier,
                () -> Arrays.stream(manager().getAllExtensions(null, new Yes()))
                        .flatMap(Arrays::stream)
                        .filter(found -> found != null && identifier.equals(identifierOf(found)))
                        .toList());
    }

    /** Whether an extension is there and is not resting. */
    public boolean isAtWork(String identifier) {
        return named(identifier).stream()
                .anyMatch(found -> office.call("asking for the state of " + identifier, () -> {
                    Optional<?> state = found.isRegistered(null, new Yes());
                    return state.IsPresent
                            && state.Value instanceof com.sun.star.beans.Ambiguous<?> answer
                            && Boolean.TRUE.equals(answer.Value)
                            && !answer.IsAmbiguous;
                }));
    }

    private XPackage theOne(String identifier) {
        List<XPackage> found = named(identifier);
        if (found.size() != 1) {
            throw new OfficeFailure(found.size() + " extensions are named " + identifier);
        }
        return found.get(0);
    }

    private static String identifierOf(XPackage found) {
        Optional<String> identifier = found.getIdentifier();
        return identifier.IsPresent ? identifier.Value : "";
    }

    private XExtensionManager manager() {
        return ExtensionManager.get(office.uno());
    }

    /** Somebody who says yes to everything, as a user would who wants it done. */
    private static final class Yes implements XCommandEnvironment, XInteractionHandler {
        @Override
        public XInteractionHandler getInteractionHandler() {
            return this;
        }

        @Override
        public @Nullable XProgressHandler getProgressHandler() {
            return null;
        }

        @Override
        public void handle(XInteractionRequest request) {
            for (XInteractionContinuation answer : request.getContinuations()) {
                XInteractionApprove yes = UnoRuntime.queryInterface(XInteractionApprove.class, answer);
                if (yes != null) {
                    yes.select();
                    return;
                }
            }
        }
    }
}
