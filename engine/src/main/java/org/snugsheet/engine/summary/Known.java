package org.snugsheet.engine.summary;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;

/**
 * A value, or the reason why there is none.
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
     * @param reason why there is none
     */
    record Not<T>(Finding reason) implements Known<T> {}

    /**
     * What a call answers, or why it refuses.
     *
     * @param <T> the type of the answer
     * @param call the call
     * @return its answer or the reason of its refusal
     */
    static <T> Known<T> of(Supplier<T> call) {
        try {
            return new Value<>(call.get());
        } catch (InvalidInputException refusal) {
            return new Not<>(refusal.finding());
        }
    }

    /**
     * What follows from the value, which may in turn be refused.
     *
     * @param <U> the type of what follows
     * @param next what follows from a value
     * @return what follows; without a value the same reason
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
     * @throws InvalidInputException for its reason if there is none
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
