package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.Milestone;
import faultfinch.board.PlacedPart;
import faultfinch.diagnosis.BusCycle;
import faultfinch.diagnosis.Routine;
import faultfinch.diagnosis.Why;
import faultfinch.fault.CellDefect;
import faultfinch.fault.CellStuck;
import faultfinch.fault.Condition;
import faultfinch.fault.Fault;
import faultfinch.fault.MisProgrammed;
import faultfinch.machine.PinDifference;
import faultfinch.machine.Standing;
import faultfinch.signal.Level;
import faultfinch.symptom.Symptoms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** The chain from a fault to what shows, in sentences. */
final class WhyPage {
  private static final int PINS_NAMED = 3;
  private static final int BITS = 8;

  private final Why why;
  private final Words words;
  private final Board board;
  private final List<String> lines = new ArrayList<>();

  WhyPage(Why why, Words words) {
    this.why = why;
    this.words = words;
    board = why.setup().board();
  }

  List<String> lines() {
    List<String> wrong = new ArrayList<>();
    why.setup().faults().forEach(f -> wrong.add(f.text()));
    why.setup().out().stream().sorted().forEach(r -> wrong.add(words.say("run.out-of-it", r)));
    say("why.headline", board.title(), String.join(", ", wrong));
    acts();
    bus();
    processor();
    steps();
    shows();
    return lines;
  }

  private void say(String key, Object... gaps) {
    lines.add(words.say(key, gaps));
  }

  /** That there are so many more, if there are. */
  private String more(String key, int count) {
    return count <= 0 ? "" : words.say(count == 1 ? key + "-one" : key, count);
  }

  private void heading(String key) {
    lines.add("");
    say(key);
  }

  private void acts() {
    heading("why.acts");
    for (Why.OtherSupply s : why.supplies()) {
      String more = more("why.supply-more", s.others());
      say("why.supply", part(s.ref()), volts(s.hadMv()), volts(s.expectedMv()), s.net(), more);
    }
    why.blown().forEach(ref -> say("why.blown", part(ref)));
    why.killed().forEach(ref -> say("why.killed", part(ref)));
    why.clock()
        .ifPresent(
            c ->
                say(
                    c.hadHertz() == 0 ? "why.clock-stands" : "why.clock",
                    c.net(),
                    c.pad().text(),
                    megahertz(c.hadHertz()),
                    megahertz(c.expectedHertz())));
    boolean one =
        why.stands().isPresent()
            && why.reads().isPresent()
            && why.stands().get().moment().equals(why.reads().get().moment())
            && !why.stands().get().readers().isEmpty();
    why.stands().ifPresent(a -> act("why.stands", a));
    if (!one) {
      why.reads().ifPresent(a -> act(why.stands().isPresent() ? "why.reads" : "why.stands", a));
    }
    if (why.reads().isEmpty() && why.clock().isEmpty()) {
      why.misreads().ifPresent(a -> act("why.stands", a));
      say(why.misreads().isPresent() ? "why.reads-own" : "why.reads-nothing");
    }
  }

  private void act(String key, Why.Act act) {
    PinDifference s = act.source();
    String stands =
        s.level()
            ? words.say(
                "why.level",
                act.net(),
                s.pad().text(),
                level(s.had(), s.hadMv()),
                level(s.expected(), s.expectedMv()))
            : words.say("why.same-level", act.net(), s.pad().text(), level(s.had(), s.hadMv()));
    List<PinDifference> readers = act.readers();
    String reads = readers.isEmpty() ? words.say("why.nobody-reads") : readers(readers);
    String more = more("why.nets-more", act.nets() - 1);
    say(key, moment(act.moment()), stands, reads, more);
  }

  private String readers(List<PinDifference> readers) {
    String named =
        readers.stream()
            .limit(PINS_NAMED)
            .map(d -> d.pad().text())
            .collect(Collectors.joining(", "));
    String more = more("why.pins-more", readers.size() - PINS_NAMED);
    int bit = readers.get(0).one() ? 1 : 0;
    return words.say(readers.size() == 1 ? "why.reader" : "why.readers", named, more, bit, 1 - bit);
  }

  private String moment(Why.Moment m) {
    String phase = words.say("why.phase." + m.phase().name());
    return m.cycle() == 0
        ? words.say("why.at-power-on", phase)
        : words.say("why.moment", time(m.nanoseconds()), m.cycle(), phase);
  }

  private String level(Level level, int millivolts) {
    return words.say("why.level." + level.name(), volts(millivolts));
  }

  private void bus() {
    heading("why.bus");
    if (why.bus().isEmpty()) {
      say("why.bus-alike");
    } else {
      Why.OtherCycle c = why.bus().get();
      String when = time(c.nanoseconds());
      if (c.had().isEmpty()) {
        BusCycle missed = c.expected().orElseThrow();
        say("why.bus-ends", cycle(missed), missed.cycle(), when);
      } else if (c.expected().isEmpty()) {
        say("why.bus-goes-on", cycle(c.had().get()), c.had().get().cycle(), when);
      } else {
        differs(c.expected().get(), c.had().get(), when);
      }
    }
    place();
  }

  private void differs(BusCycle expected, BusCycle had, String when) {
    if (!had.asksAs(expected)) {
      say("why.bus-asks", had.cycle(), when, cycle(had), cycle(expected));
    } else {
      say(
          had.reads() ? "why.bus-reads" : "why.bus-writes",
          had.cycle(),
          when,
          hex4(had.address()),
          hex2(had.value()),
          hex2(expected.value()),
          bits(had.value() ^ expected.value()));
      Why.OtherCycle c = why.bus().orElseThrow();
      if (had.reads()) {
        answers(c.shouldAnswer(), c.answers());
      }
    }
    if (had.cycle() != expected.cycle()) {
      say("why.bus-shifted", expected.cycle());
    }
  }

  private void answers(List<String> should, List<String> does) {
    List<String> silent = should.stream().filter(r -> !does.contains(r)).toList();
    List<String> intruders = does.stream().filter(r -> !should.contains(r)).toList();
    String nobody = words.say("why.nobody");
    if (should.isEmpty() && does.isEmpty()) {
      say("why.answers-nobody");
    } else if (silent.isEmpty() && intruders.isEmpty()) {
      say("why.answers-alike", parts(should));
    } else if (silent.isEmpty()) {
      say("why.answers-too", should.isEmpty() ? nobody : parts(should), parts(intruders));
    } else if (intruders.isEmpty()) {
      String key = silent.size() == should.size() ? "why.answers-none" : "why.answers-not";
      say(key, parts(should), parts(silent));
    } else {
      say("why.answers-instead", parts(silent), parts(intruders));
    }
  }

  private void place() {
    if (why.place().isPresent()) {
      Routine r = why.place().get();
      say(outOfReset(r) ? "why.place-reset" : "why.place", routine(r));
    }
    why.lastStep().ifPresent(m -> say("why.last-step", m.name(), m.says()));
  }

  /** Whether a place is where a processor woke up by chance, before it was ever reset. */
  private boolean outOfReset(Routine place) {
    boolean labels = board.firmware().stream().anyMatch(f -> !f.labels().isEmpty());
    return labels && place.rom().isEmpty() && why.lastStep().isEmpty();
  }

  private void processor() {
    heading("why.processor");
    int before = lines.size();
    why.strays()
        .ifPresent(
            s ->
                say(
                    outOfReset(s.from()) ? "why.strays-reset" : "why.strays",
                    s.cycle(),
                    time(s.nanoseconds()),
                    routine(s.from()),
                    routine(s.had()),
                    routine(s.expected())));
    why.leaves()
        .filter(l -> why.strays().stream().noneMatch(s -> s.cycle() == l.cycle()))
        .ifPresent(
            l ->
                say(
                    "why.leaves",
                    l.cycle(),
                    time(l.nanoseconds()),
                    hex4(l.address()),
                    routine(l.from())));
    Standing standing = why.end().standing();
    if (standing != why.end().expected()) {
      String since = why.end().since().isPresent() ? time(why.end().since().getAsLong()) : "";
      say("why.end." + standing.name() + (since.isEmpty() ? ".never" : ""), since);
    }
    why.circles()
        .ifPresent(c -> say("why.circles", c.instructions(), routine(c.from()), routine(c.to())));
    if (lines.size() == before) {
      say("why.processor-alike");
    }
  }

  private void steps() {
    if (board.milestones().isEmpty()) {
      return;
    }
    heading("why.steps");
    List<Milestone> missed = new ArrayList<>();
    List<Why.OtherStep> shifted = new ArrayList<>();
    for (Why.OtherStep s : why.steps()) {
      if (s.had().isEmpty()) {
        missed.add(s.milestone());
      } else if (s.expected().isPresent()) {
        shifted.add(s);
      }
    }
    if (!missed.isEmpty()) {
      String rest = missed.stream().skip(1).map(Milestone::name).collect(Collectors.joining(", "));
      Milestone first = missed.get(0);
      say("why.missed", first.name(), first.says());
      if (!rest.isEmpty()) {
        say(missed.size() == 2 ? "why.missed-too-one" : "why.missed-too", rest);
      }
    }
    for (Why.OtherStep s : why.steps()) {
      if (s.expected().isEmpty()) {
        Milestone m = s.milestone();
        say("why.reached", m.name(), m.says(), time(s.had().getAsLong()));
      }
    }
    if (!shifted.isEmpty()) {
      shifted(shifted);
    }
    if (why.steps().isEmpty()) {
      say("why.steps-alike");
    }
  }

  private void shifted(List<Why.OtherStep> shifted) {
    Why.OtherStep first = shifted.get(0);
    long by = by(first.expected(), first.had());
    String more = more("why.shifted-more", shifted.size() - 1);
    say(by > 0 ? "why.later" : "why.earlier", first.milestone().name(), time(Math.abs(by)), more);
  }

  private static long by(OptionalLong expected, OptionalLong had) {
    return had.orElseThrow() - expected.orElseThrow();
  }

  private void shows() {
    heading("why.shows");
    for (Why.OtherFeature f : why.shows()) {
      say("why.otherwise", feature(f.name(), f.had()), f.expected());
    }
    if (why.shows().isEmpty()) {
      say(why.keys() ? "why.shows-nothing-keys" : "why.shows-nothing");
    }
    why.starts().ifPresent(s -> say("why.starts", s));
    if (why.steps().isEmpty() && why.shows().isEmpty()) {
      why.setup().faults().forEach(this::takes);
    }
  }

  private String feature(String name, String feature) {
    if (name.startsWith(Symptoms.KEY)) {
      return words.say("run.key", name.substring(Symptoms.KEY.length()), feature);
    }
    if (name.startsWith(Symptoms.PICTURE)) {
      return words.say("why.picture", name.substring(Symptoms.PICTURE.length()), feature);
    }
    return words.say("run.shows." + name, feature);
  }

  private void takes(Fault fault) {
    Fault base = fault.base();
    boolean cell =
        base instanceof CellStuck || base instanceof CellDefect || base instanceof MisProgrammed;
    if (!fault.condition().equals(Condition.ALWAYS)) {
      say("why.takes.condition", fault.text(), fault.condition().text());
    } else if (cell) {
      say("why.takes.cell", fault.text(), part(base.place()));
    } else if (why.reads().isEmpty()) {
      say("why.takes.use", fault.text(), base.spot());
    } else {
      say("why.takes.effect", fault.text(), base.spot());
    }
  }

  private String cycle(BusCycle c) {
    String key = c.fetches() ? "why.cycle.fetch" : c.reads() ? "why.cycle.read" : "why.cycle.write";
    return words.say(key, hex4(c.address()), hex2(c.value()));
  }

  private String routine(Routine r) {
    String address = hex4(r.address());
    if (!r.named()) {
      return r.rom().isEmpty()
          ? words.say("why.address", address)
          : words.say("why.address-in", address, part(r.rom()));
    }
    return r.offset() == 0
        ? words.say("why.label", r.label(), address)
        : words.say("why.label-and", r.label(), r.offset(), address);
  }

  private String part(String ref) {
    String role = board.part(ref).map(PlacedPart::role).orElse("");
    return role.isEmpty() ? ref : words.say("why.part", ref, role);
  }

  private String parts(List<String> refs) {
    return refs.size() <= 2
        ? refs.stream().map(this::part).collect(Collectors.joining(words.say("why.and")))
        : String.join(", ", refs);
  }

  private String bits(int differ) {
    List<String> bits = new ArrayList<>();
    for (int i = 0; i < BITS; i++) {
      if ((differ >>> i & 1) != 0) {
        bits.add(String.valueOf(i));
      }
    }
    String key = bits.size() == 1 ? "why.bit" : bits.size() == BITS ? "why.all-bits" : "why.bits";
    return words.say(key, String.join(", ", bits));
  }

  private static String hex4(int value) {
    return String.format(Locale.ROOT, "%04X", value);
  }

  private static String hex2(int value) {
    return String.format(Locale.ROOT, "%02X", value);
  }

  private static String time(long nanoseconds) {
    return BigDecimal.valueOf(nanoseconds, 6).toPlainString();
  }

  private static String volts(int millivolts) {
    return BigDecimal.valueOf(millivolts, 3).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  private static String megahertz(double hertz) {
    return BigDecimal.valueOf(hertz)
        .movePointLeft(6)
        .setScale(4, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
