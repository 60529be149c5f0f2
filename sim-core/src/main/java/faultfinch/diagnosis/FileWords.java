package faultfinch.diagnosis;

import java.io.DataOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every word of a file once, numbered as it comes. */
final class FileWords {
  private final Map<String, Integer> index = new LinkedHashMap<>();

  int of(String word) {
    return index.computeIfAbsent(word, k -> index.size());
  }

  /** How many there are, then each. */
  void writeTo(DataOutputStream out) throws IOException {
    out.writeInt(index.size());
    for (String word : index.keySet()) {
      out.writeUTF(word);
    }
  }
}
