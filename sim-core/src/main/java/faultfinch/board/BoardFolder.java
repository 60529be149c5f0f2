package faultfinch.board;

import java.io.IOException;

/** Where the files of one board lie: on disk, or inside the program. */
interface BoardFolder {

  /** The bytes of a file of the folder; the name is relative to it. */
  byte[] bytes(String name) throws IOException;

  /** The file's name for messages. */
  String shown(String name);

  /** Whether tests have read every file of it, so that what nobody asks for can be left unread. */
  default boolean isProven() {
    return false;
  }
}
