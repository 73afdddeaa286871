package org.snugsheet.engine.summary;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;

/**
 * A value, or the reason why it is unknown.
 *
 * @param <T> the type of the value
 */
public sealed interface Known<T> {

    /**
     * A value.
     *
     * @param <T> its type
     * @param value the value
     */
    record Value<T>(T value) implements Known<T> {}

    /**
     * No value.
     *
     * @param <T> the type it would have
     * @param reason why it is unknown
     */
    record Not<T>(Finding reason) implements Known<T> {}

    /**
     * The result of a call, or why it failed.
     *
     * @param <T> the type of the answer
     * @param call the call
     * @return its result, or the reason why it failed
     */
    static <T> Known<T> of(Supplier<T> call) {
        try {
            return new Value<>(call.get());
        } catch (InvalidInputException refusal) {
            return new Not<>(refusal.finding());
        }
    }

    /**
     * A result computed from the value, which may fail in turn.
     *
     * @param <U> the type of what follows
     * @param next computes the result from a value
     * @return the result; without a value the same reason
     */
    default <U> Known<U> then(Function<T, U> next) {
        if (this instanceof Value<T> known) {
            return of(() -> next.apply(known.value()));
        }
        return new Not<>(((Not<T>) this).reason());
    }

    /**
     * The value.
     *
     * @return the value
     * @throws InvalidInputException for its reason if there is no value
     */
    default T orRefuse() {
        if (this instanceof Value<T> known) {
            return known.value();
        }
        throw new InvalidInputException(((Not<T>) this).reason());
    }

    /**
     * The value, if there is one.
     *
     * @return the value; empty if there is none
     */
    default Optional<T> found() {
        return this instanceof Value<T> known ? Optional.of(known.value()) : Optional.empty();
    }

    /**
     * Why there is no value.
     *
     * @return the reason; empty if there is a value
     */
    default Optional<Finding> whyNot() {
        return this instanceof Not<T> not ? Optional.of(not.reason()) : Optional.empty();
    }
}
