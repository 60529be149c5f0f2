package faultfinch.board;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What one ROM holds.
 *
 * @param image its bytes, as long as the part has cells
 * @param labels addresses by label name
 */
public record Firmware(String ref, byte[] image, Map<String, Integer> labels) {
  public Firmware {
    image = image.clone();
    labels = Collections.unmodifiableMap(new LinkedHashMap<>(labels));
  }

  @Override
  public byte[] image() {
    return image.clone();
  }
}
