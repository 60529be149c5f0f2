package faultfinch.fault;

import java.util.Optional;

/** A fault that shows only under a condition; identity and cure are those of its base. */
public record Conditional(Fault base, Condition condition) implements Fault {
  public Conditional {
    if (base instanceof Conditional || condition.equals(Condition.ALWAYS)) {
      throw new IllegalArgumentException(
          "found '"
              + base.text()
              + "' with "
              + condition.kind()
              + ", right would be one condition");
    }
  }

  @Override
  public String text() {
    return base.text() + " " + condition.text();
  }

  @Override
  public String place() {
    return base.place();
  }

  @Override
  public FaultKinds kind() {
    return base.kind();
  }

  @Override
  public Seat seat() {
    return base.seat();
  }

  @Override
  public String spot() {
    return base.spot();
  }

  @Override
  public Optional<String> decides() {
    return base.decides();
  }

  @Override
  public void applyTo(Harm harm) {
    base.applyTo(harm);
  }
}
