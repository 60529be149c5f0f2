package faultfinch.board;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The file that lists the overlays of a board and the ticks they are told apart by. */
final class VariantsFile {
  static final String FOLDER = "overlays/";
  static final String FILE = FOLDER + "overlays.json";
  private static final int VERSION = 1;
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9 -]*");
  private static final String NAMED = "small letters, digits, blanks and hyphens, a letter first";

  private final BoardFolder folder;
  private final Located root;

  private VariantsFile(BoardFolder folder, byte[] bytes) {
    this.folder = folder;
    root =
        Located.read(folder.shown(FILE), bytes)
            .keys(List.of("format", "ticks", "duties", "overlays"), List.of());
    root.get("format").whole(VERSION, VERSION);
  }

  /** The file of a board, if it has overlays. */
  static Optional<VariantsFile> in(BoardFolder folder) {
    try {
      return Optional.of(new VariantsFile(folder, folder.bytes(FILE)));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new BadInput(folder.shown(FILE), 1, 1, Programs.why(e), "a file of overlays");
    }
  }

  /** Names of the overlays, in the order of the file. */
  List<String> names() {
    Set<String> names = new LinkedHashSet<>();
    for (Located name : root.get("overlays").items()) {
      if (!names.add(name.words())) {
        throw name.wrong("overlay '" + name.text() + "' again", "each overlay once");
      }
    }
    return List.copyOf(names);
  }

  /** The overlay of this name, which the file must list. */
  Overlay overlay(String name) {
    Located listed =
        root.get("overlays").items().stream()
            .filter(l -> l.text().equals(name))
            .findFirst()
            .orElseThrow(
                () ->
                    root.get("overlays")
                        .wrong("no overlay '" + name + "'", NearNames.alternatives(names())));
    String file = FOLDER + name + ".json";
    try {
      Overlay overlay = new Overlay(folder.shown(file), folder.bytes(file));
      if (!overlay.name().equals(name)) {
        throw listed.wrong("'" + name + "' of a file named " + overlay.name(), overlay.name());
      }
      return overlay;
    } catch (IOException e) {
      throw listed.wrong(Programs.why(e) + " '" + file + "'", "an overlay file that can be read");
    }
  }

  /** All of it, for the board that the overlays lie over. */
  Variants variants(Board board) {
    Map<String, String> duties = duties(board);
    Map<String, String> here = new LinkedHashMap<>();
    List<Tick> ticks = new ArrayList<>();
    for (Located.Entry entry : root.get("ticks").entries()) {
      Tick tick = tick(entry, duties.keySet());
      here.put(tick.name(), answer(entry.value().get("here"), tick));
      ticks.add(tick);
    }
    List<Variants.Variant> boards = new ArrayList<>();
    boards.add(new Variants.Variant(board.name(), board.title(), board.about(), here));
    for (String name : names()) {
      Overlay overlay = overlay(name);
      overlay.duties().forEach(d -> known(d, duties.keySet()));
      Map<String, String> answers = new LinkedHashMap<>(here);
      for (Located.Entry said : overlay.ticks()) {
        String of = said.key().text();
        Tick tick =
            ticks.stream()
                .filter(t -> t.name().equals(of))
                .findFirst()
                .orElseThrow(
                    () ->
                        said.key()
                            .wrong("unknown tick '" + of + "'", NearNames.of(of, here.keySet())));
        answers.put(of, answer(said.value(), tick));
      }
      boards.add(
          new Variants.Variant(
              BoardReader.overlaid(board.name(), name), overlay.title(), overlay.about(), answers));
    }
    return new Variants(ticks, boards, duties);
  }

  private Map<String, String> duties(Board board) {
    Map<String, String> words = new LinkedHashMap<>();
    root.get("duties").entries().forEach(e -> words.put(e.key().text(), e.value().words()));
    for (Map.Entry<String, String> part : board.duties().entrySet()) {
      if (!words.containsKey(part.getValue())) {
        throw root.get("duties")
            .wrong(
                "no words for the duty '" + part.getValue() + "' of " + part.getKey(),
                "words for the duty of every part");
      }
    }
    return words;
  }

  private static void known(Located duty, Set<String> all) {
    if (!all.contains(duty.text())) {
      throw duty.wrong("unknown duty '" + duty.text() + "'", NearNames.of(duty.text(), all));
    }
  }

  private static String answer(Located answer, Tick tick) {
    return answer.oneOf(tick.answers());
  }

  private static Tick tick(Located.Entry entry, Set<String> duties) {
    Located tick = entry.value().keys(List.of("asks", "answers", "here"), List.of("concerns"));
    List<Located> answers = tick.get("answers").items();
    if (answers.size() < 2) {
      throw tick.get("answers").wrong("two answers or more");
    }
    List<String> concerns = new ArrayList<>();
    for (Located duty : tick.find("concerns").map(Located::items).orElse(List.of())) {
      known(duty, duties);
      concerns.add(duty.text());
    }
    return new Tick(
        entry.key().text(NAME, NAMED),
        tick.get("asks").words(),
        answers.stream().map(a -> a.text(NAME, NAMED)).toList(),
        concerns);
  }
}
