package faultfinch.fault;

import faultfinch.fault.Harm.RegulatorHarm;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The regulator gives nothing, too little, or what its input brings. */
public record RegulatorFault(String ref, RegulatorHarm way) implements Fault {

  static Optional<Fault> read(Words words) {
    String text = words.normal();
    return sites(words.anatomy()).stream().filter(f -> f.text().equals(text)).findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().supply().rails().stream()
        .flatMap(
            rail ->
                Arrays.stream(RegulatorHarm.values())
                    .<Fault>map(h -> new RegulatorFault(rail.regulator(), h)))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": " + way.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.REGULATOR;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what " + ref + " is");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.regulator(ref, way);
  }
}
