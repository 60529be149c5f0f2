package faultfinch.symptom;

import faultfinch.machine.Machine;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.provider.ArgumentsSource;
import org.junit.jupiter.params.support.ParameterDeclarations;

/**
 * A long test of what shows, on the fast machine at every check and on the plain one too in the
 * sweep: that both play the same is held by the agreement tests.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest
@ArgumentsSource(EachMachine.Source.class)
@interface EachMachine {

  final class Source implements ArgumentsProvider {
    @Override
    public Stream<? extends Arguments> provideArguments(
        ParameterDeclarations parameters, ExtensionContext context) {
      return Stream.of(Machine.Kind.values())
          .filter(kind -> kind == Machine.Kind.FAST || Boolean.getBoolean("faultfinch.sweep"))
          .map(Arguments::of);
    }
  }
}
