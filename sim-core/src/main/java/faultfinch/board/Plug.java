package faultfinch.board;

import java.util.List;

/**
 * Something with parts of its own that can be put on a board for a while.
 *
 * @param nets of its own parts
 * @param contacts where its pins meet the board's
 * @param firmware of its own ROMs
 */
public record Plug(
    List<PlacedPart> parts, List<Net> nets, List<Contact> contacts, List<Firmware> firmware) {
  public Plug {
    parts = List.copyOf(parts);
    nets = List.copyOf(nets);
    contacts = List.copyOf(contacts);
    firmware = List.copyOf(firmware);
  }

  /** Nothing but leads between pins of the board. */
  public static Plug leads(List<Contact> leads) {
    return new Plug(List.of(), List.of(), leads, List.of());
  }
}
