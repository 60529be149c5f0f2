package faultfinch.cli;

import faultfinch.board.Pad;
import faultfinch.diagnosis.BusCycle;
import faultfinch.diagnosis.Routine;
import faultfinch.diagnosis.Why;
import faultfinch.fault.Fault;
import faultfinch.machine.PinDifference;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The chain from a fault to what shows, for machines: a link that is not there has no key. */
final class WhyJson {
  private final Why why;

  WhyJson(Why why) {
    this.why = why;
  }

  Map<String, Object> page() {
    Map<String, Object> page = new LinkedHashMap<>();
    page.put("board", why.setup().board().name());
    page.put("faults", why.setup().faults().stream().map(Fault::text).toList());
    page.put("out", why.setup().out().stream().sorted().toList());
    page.put("seed", why.setup().seed());
    page.put("powerOn", why.setup().powerOn());
    page.put("keys", why.keys());
    page.put("watchedNanoseconds", why.watched());
    page.put("supplies", why.supplies().stream().map(WhyJson::supply).toList());
    page.put("blown", why.blown());
    page.put("killed", why.killed());
    why.clock().ifPresent(c -> page.put("clock", clock(c)));
    why.stands().ifPresent(a -> page.put("stands", act(a)));
    why.reads().ifPresent(a -> page.put("reads", act(a)));
    why.misreads().ifPresent(a -> page.put("misreads", act(a)));
    why.bus().ifPresent(b -> page.put("bus", bus(b)));
    why.place().ifPresent(r -> page.put("place", routine(r)));
    why.lastStep().ifPresent(m -> page.put("lastStep", m.label()));
    why.strays()
        .ifPresent(
            s -> {
              Map<String, Object> stray = at(s.cycle(), s.nanoseconds());
              stray.put("from", routine(s.from()));
              stray.put("expected", routine(s.expected()));
              stray.put("had", routine(s.had()));
              page.put("strays", stray);
            });
    why.leaves()
        .ifPresent(
            l -> {
              Map<String, Object> leaving = at(l.cycle(), l.nanoseconds());
              leaving.put("from", routine(l.from()));
              leaving.put("address", l.address());
              page.put("leaves", leaving);
            });
    page.put("end", word(why.end().standing()));
    why.end().since().ifPresent(ns -> page.put("lastCycleNanoseconds", ns));
    why.circles()
        .ifPresent(
            c -> {
              Map<String, Object> circle =
                  JsonPage.object("from", routine(c.from()), "to", routine(c.to()));
              circle.put("instructions", c.instructions());
              page.put("circles", circle);
            });
    page.put("steps", why.steps().stream().map(WhyJson::step).toList());
    page.put("shows", why.shows().stream().map(WhyJson::feature).toList());
    why.starts().ifPresent(s -> page.put("starts", s));
    return page;
  }

  private static Map<String, Object> at(long cycle, long nanoseconds) {
    return JsonPage.object("cycle", cycle, "nanoseconds", nanoseconds);
  }

  private static Map<String, Object> supply(Why.OtherSupply s) {
    Map<String, Object> supply = JsonPage.object("net", s.net(), "part", s.ref());
    supply.put("expectedMillivolts", s.expectedMv());
    supply.put("hadMillivolts", s.hadMv());
    supply.put("moreParts", s.others());
    return supply;
  }

  private static Map<String, Object> clock(Why.OtherClock c) {
    Map<String, Object> clock = JsonPage.object("net", c.net(), "pin", c.pad().text());
    clock.put("expectedHertz", c.expectedHertz());
    clock.put("hadHertz", c.hadHertz());
    return clock;
  }

  private static Map<String, Object> act(Why.Act a) {
    Map<String, Object> act = at(a.moment().cycle(), a.moment().nanoseconds());
    act.put("phase", word(a.moment().phase()));
    act.put("net", a.net());
    act.put("pin", a.source().pad().text());
    act.put("expected", word(a.source().expected()));
    act.put("expectedMillivolts", a.source().expectedMv());
    act.put("had", word(a.source().had()));
    act.put("hadMillivolts", a.source().hadMv());
    act.put("readOtherwise", a.readers().stream().map(PinDifference::pad).map(Pad::text).toList());
    act.put("nets", a.nets());
    return act;
  }

  private static Map<String, Object> bus(Why.OtherCycle b) {
    Map<String, Object> bus = new LinkedHashMap<>();
    bus.put("nanoseconds", b.nanoseconds());
    b.expected().ifPresent(c -> bus.put("expected", cycle(c)));
    b.had().ifPresent(c -> bus.put("had", cycle(c)));
    bus.put("shouldAnswer", b.shouldAnswer());
    bus.put("answers", b.answers());
    return bus;
  }

  private static Map<String, Object> cycle(BusCycle c) {
    Map<String, Object> cycle = JsonPage.object("cycle", c.cycle(), "address", c.address());
    cycle.put("value", c.value());
    cycle.put("reads", c.reads());
    cycle.put("fetches", c.fetches());
    return cycle;
  }

  private static Map<String, Object> routine(Routine r) {
    Map<String, Object> routine = new LinkedHashMap<>();
    routine.put("address", r.address());
    if (r.named()) {
      routine.put("label", r.label());
      routine.put("offset", r.offset());
    }
    return routine;
  }

  private static Map<String, Object> step(Why.OtherStep s) {
    Map<String, Object> step = new LinkedHashMap<>();
    step.put("label", s.milestone().label());
    s.expected().ifPresent(ns -> step.put("expectedNanoseconds", ns));
    s.had().ifPresent(ns -> step.put("nanoseconds", ns));
    return step;
  }

  private static Map<String, Object> feature(Why.OtherFeature f) {
    Map<String, Object> feature = JsonPage.object("feature", f.name(), "expected", f.expected());
    feature.put("had", f.had());
    return feature;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
