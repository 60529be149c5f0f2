package faultfinch.diagnosis;

import java.util.List;

/**
 * What became of a board before it was brought, as its owner tells it: it makes some faults
 * likelier than others before anybody looks. By how much is judgement, by the least repair of a
 * fault.
 */
public enum History {
  /** Stored in a damp place, or something was spilled over it. */
  DAMP("damp"),
  /** Somebody has been inside, to repair it or to change something. */
  OPENED("opened"),
  /** It fell, or was sent by post. */
  DROPPED("dropped"),
  /** Not switched on for years. */
  IDLE("idle"),
  /** A wrong supply, a surge, something plugged in while it was on. */
  SURGE("surge");

  private final String word;

  History(String word) {
    this.word = word;
  }

  /** As the figures and the vocabulary name it. */
  public String word() {
    return word;
  }

  /** The same suspects after all of these, each as many times as likely as they make it. */
  static Suspects after(List<History> all, Suspects suspects, ErrorRates rates) {
    if (all.isEmpty()) {
      return suspects;
    }
    return new Suspects(
        suspects.all().stream()
            .map(
                s -> {
                  double times = 1;
                  for (History history : all) {
                    times *= rates.likelier(history, s.repair().kind());
                  }
                  return new Suspect(
                      s.fault(), s.place(), s.weight() * times, s.repair(), s.cures());
                })
            .toList());
  }
}
