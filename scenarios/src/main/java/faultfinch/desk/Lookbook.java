package faultfinch.desk;

import faultfinch.diagnosis.FaultDictionary;
import faultfinch.symptom.EveryKey;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Which looks can be weighed, and what each can show. */
public interface Lookbook {

  /** All of them. */
  Set<String> looks();

  /** All that a look can show, the healthy outcome first. */
  List<String> outcomes(String look);

  /** The first few of the outcomes of a look. */
  default List<String> examples(String look) {
    return outcomes(look).stream().limit(3).toList();
  }

  /**
   * The look at which letters are to be had: the set as it stands, or when all keys were typed.
   *
   * @param stand whether they stand in a text
   */
  default String ofLetters(Predicate<String> stand) {
    String shown = String.join("", PictureText.of(outcomes(Phrases.SCREEN).get(0)).rows());
    return stand.test(shown) || !looks().contains(EveryKey.NAME) ? Phrases.SCREEN : EveryKey.NAME;
  }

  /** What a look shows on a board with this fault, if it is known. */
  default Optional<String> shown(String fault, String look) {
    return Optional.empty();
  }

  /** Looks that tell nothing, since healthy boards differ in them. */
  Set<String> differing();

  /** That of a dictionary. */
  static Lookbook of(FaultDictionary dictionary) {
    Set<String> looks = new LinkedHashSet<>(dictionary.looks());
    Set<String> differing = new LinkedHashSet<>(dictionary.dropped());
    return new Lookbook() {
      @Override
      public Set<String> looks() {
        return looks;
      }

      @Override
      public List<String> outcomes(String look) {
        return dictionary.outcomes(dictionary.look(look).orElseThrow());
      }

      @Override
      public Optional<String> shown(String fault, String look) {
        return dictionary.knows(fault)
            ? Optional.of(
                dictionary.outcome(dictionary.look(look).orElseThrow(), dictionary.row(fault)))
            : Optional.empty();
      }

      @Override
      public Set<String> differing() {
        return differing;
      }
    };
  }
}
