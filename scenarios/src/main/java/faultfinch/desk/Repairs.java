package faultfinch.desk;

import faultfinch.board.NearNames;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Repairs as they are said: {@code exchanged U4} for whatever it takes to exchange it there. */
public final class Repairs {
  private static final List<RepairAction.Kind> EXCHANGES =
      List.of(
          RepairAction.Kind.EXCHANGE,
          RepairAction.Kind.DESOLDER_AND_SOCKET,
          RepairAction.Kind.EXCHANGE_SMALL);

  private final List<RepairAction> actions;
  private final Vocabulary vocabulary = Vocabulary.shipped();

  /**
   * @param actions all that can be done to the board
   */
  public Repairs(List<RepairAction> actions) {
    this.actions = List.copyOf(actions);
  }

  /** The repair of these words, if it is one of the board's. */
  public Optional<RepairAction> named(String words) {
    String small = words.strip().toLowerCase(Locale.ROOT);
    return actions.stream()
        .filter(a -> a.text().equalsIgnoreCase(words.strip()))
        .findFirst()
        .or(() -> behind(small, "repair.exchange", EXCHANGES))
        .or(() -> behind(small, "repair.reseat", List.of(RepairAction.Kind.RESEAT)))
        .or(() -> behind(small, "repair.reflow", List.of(RepairAction.Kind.REFLOW)))
        .or(() -> behind(small, "repair.socket", List.of(RepairAction.Kind.NEW_SOCKET)))
        .or(() -> behind(small, "repair.link", List.of(RepairAction.Kind.LINK_TRACK)))
        .or(() -> behind(small, "repair.clear", List.of(RepairAction.Kind.CLEAR_BRIDGE)));
  }

  private Optional<RepairAction> behind(String small, String key, List<RepairAction.Kind> kinds) {
    for (String word : vocabulary.words(key)) {
      if (small.startsWith(word + " ")) {
        String place = small.substring(word.length() + 1).strip();
        return kinds.stream()
            .flatMap(k -> actions.stream().filter(a -> a.kind() == k))
            .filter(a -> a.place().equalsIgnoreCase(place))
            .findFirst();
      }
    }
    return Optional.empty();
  }

  /** The nearest to words that name none. */
  public String nearest(String words) {
    List<String> texts = new ArrayList<>();
    actions.forEach(a -> texts.add(a.text()));
    return NearNames.of(words, texts);
  }
}
