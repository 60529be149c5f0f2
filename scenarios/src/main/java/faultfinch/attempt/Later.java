package faultfinch.attempt;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A value that is dear to make and made when it is first asked for, so that a case starts at once.
 */
final class Later<T> {
  private final Supplier<T> maker;
  private Optional<T> made = Optional.empty();

  Later(Supplier<T> maker) {
    this.maker = maker;
  }

  T get() {
    if (made.isEmpty()) {
      made = Optional.of(maker.get());
    }
    return made.get();
  }
}
