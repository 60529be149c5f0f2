package faultfinch.diagnosis;

import java.util.List;

/** Two faults that may both be there; each stands for all that no look tells from it. */
public record SuspectPair(Suspect one, Suspect other) {

  /** Their names, in order. */
  public List<String> faults() {
    return List.of(one.fault(), other.fault());
  }
}
