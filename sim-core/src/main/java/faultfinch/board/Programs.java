package faultfinch.board;

import faultfinch.part.Memory;
import faultfinch.signal.BadInput;
import faultfinch.signal.Pin;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The images of a board's ROMs with their labels. */
final class Programs {
  private static final Pattern LABEL = Pattern.compile("[0-9A-Fa-f]{4} \\S+");

  /** Inside the board's folder: what is outside does not travel with it. */
  private static final Pattern INSIDE = Pattern.compile("(?!/)(?!.*(^|/)\\.\\.(/|$))[^\\\\:]+");

  private final BoardFolder folder;
  private final PartList parts;
  private final List<Firmware> firmware = new ArrayList<>();
  private final Map<String, Integer> labels = new LinkedHashMap<>();

  Programs(List<Located> programs, BoardFolder folder, PartList parts) {
    this.folder = folder;
    this.parts = parts;
    programs.forEach(this::add);
  }

  List<Firmware> firmware() {
    return List.copyOf(firmware);
  }

  /** The address of a label of any of the ROMs; the first ROM that has it counts. */
  int address(Located label) {
    Integer address = labels.get(label.text());
    if (address == null) {
      throw label.wrong(
          "unknown label '" + label.text() + "'",
          labels.isEmpty()
              ? "a firmware with 'labels'"
              : NearNames.of(label.text(), labels.keySet()));
    }
    return address;
  }

  private void add(Located program) {
    program.keys(List.of("part", "image"), List.of("labels"));
    PlacedPart part = parts.named(program.get("part"));
    if (!(part.type().part() instanceof Memory memory)
        || memory.pinout().role(Pin.Role.WRITE) != 0) {
      throw program.get("part").wrong(part.ref() + ", a " + part.type().type(), "a ROM");
    }
    if (firmware.stream().anyMatch(f -> f.ref().equals(part.ref()))) {
      throw program.get("part").wrong(part.ref() + " again", "each ROM once");
    }
    byte[] image = bytes(program.get("image"));
    int cells = memory.array().count();
    if (image.length != cells) {
      throw program
          .get("image")
          .wrong("an image of " + image.length + " bytes", cells + ", as many as the ROM has");
    }
    Map<String, Integer> own =
        program.find("labels").map(this::labels).orElseGet(LinkedHashMap::new);
    own.forEach(labels::putIfAbsent);
    firmware.add(new Firmware(part.ref(), image, own));
  }

  private byte[] bytes(Located name) {
    String file = name.text(INSIDE, "a file in the board's folder, for example firmware/image.bin");
    try {
      return folder.bytes(file);
    } catch (IOException e) {
      throw name.wrong(why(e) + " '" + file + "'", "a file that can be read");
    }
  }

  /** What was found in place of a file. */
  static String why(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "no file";
    }
    return e instanceof AccessDeniedException ? "no leave to read" : "a folder or damaged file";
  }

  private Map<String, Integer> labels(Located name) {
    String file = folder.shown(name.text());
    List<String> lines = LocatedParser.decoded(file, bytes(name)).lines().toList();
    Map<String, Integer> addresses = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (!LABEL.matcher(line).matches()) {
        throw new BadInput(
            file,
            i + 1,
            1,
            line.isEmpty() ? "an empty line" : "'" + line + "'",
            "an address in four hexadecimal digits, a blank, a name, for example E234 M_READY");
      }
      String label = line.substring(5);
      if (addresses.putIfAbsent(label, Integer.parseInt(line.substring(0, 4), 16)) != null) {
        throw new BadInput(file, i + 1, 6, "label '" + label + "' again", "each label once");
      }
    }
    return addresses;
  }
}
