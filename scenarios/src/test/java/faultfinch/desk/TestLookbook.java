package faultfinch.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A few looks with what they can show, written down.
 *
 * @param shown outcomes by look, the healthy one first
 * @param byFault what a fault shows, whatever the look
 */
record TestLookbook(Map<String, List<String>> shown, Map<String, String> byFault)
    implements Lookbook {
  @Override
  public Set<String> looks() {
    return shown.keySet();
  }

  @Override
  public List<String> outcomes(String look) {
    return shown.get(look);
  }

  @Override
  public Optional<String> shown(String fault, String look) {
    return Optional.ofNullable(byFault.get(fault));
  }

  @Override
  public Set<String> differing() {
    return Set.of();
  }
}
