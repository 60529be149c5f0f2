package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.SoundNet;
import faultfinch.part.Voices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Voices through a path like Tamarisk's, drawn by hand. A cycle is 8/11 us; a voice of n has 1.375
 * MHz / 16 n: n = 195 is 440.7 Hz (A4 is 440), 155 is 554.4 (C#5), 130 is 661 (E5 is 659.3).
 */
class EarTest {
  private static final double CYCLE = 8000 / 11.0;
  private static final long SECOND = 1_000_000_000;
  private static final int GROUND = SoundNet.GROUND;

  /** Nodes: 0 SUM, 1 between the resistors, 2 INV1, 3 OUT1, 4 speaker. */
  private final List<SoundNet.Resistance> resistances = new ArrayList<>();

  private final List<SoundNet.Capacity> capacities = new ArrayList<>();
  private final List<SoundNet.Amplifier> amplifiers = new ArrayList<>();
  private final SoundNet.Capacity lift = new SoundNet.Capacity(0, 1, 4.7e-9);
  private final SoundNet.Capacity filter = new SoundNet.Capacity(2, 3, 1.5e-9);
  private final Map<String, Long> words = new LinkedHashMap<>();

  EarTest() {
    resistances.add(new SoundNet.Resistance(0, 1, 33_000));
    resistances.add(new SoundNet.Resistance(1, 2, 10_000));
    resistances.add(new SoundNet.Resistance(2, 3, 47_000));
    capacities.add(lift);
    capacities.add(filter);
    capacities.add(new SoundNet.Capacity(3, 4, 22e-6));
    amplifiers.add(new SoundNet.Amplifier(GROUND, 2, 3, 600));
  }

  private Sound sound(long end) {
    SoundNet.Resistance speaker = new SoundNet.Resistance(4, GROUND, 64);
    resistances.add(speaker);
    SoundNet net =
        new SoundNet(
            5,
            resistances,
            capacities,
            amplifiers,
            Optional.of(new SoundNet.Source(0, 600)),
            Optional.of(speaker));
    Speaker listener = new Speaker("U34");
    Map<String, Long> silent = Map.of();
    listener.note(0, 0, CYCLE, Voices.of(w -> silent.getOrDefault(w.name(), 0L)));
    Voices voices = Voices.of(w -> words.getOrDefault(w.name(), 0L));
    listener.note(200_000_000, 275_000, CYCLE, voices);
    listener.note(700_000_000, 962_500, CYCLE, Voices.of(w -> silent.getOrDefault(w.name(), 0L)));
    return listener.sound(net, 0, end, Ear.RATE);
  }

  private List<String> heard() {
    return Ear.hears(sound(SECOND), 0).stream().map(Heard::says).toList();
  }

  private void chord(long a, long b) {
    words.put("half-a", a);
    words.put("half-b", b);
    words.put("loudness", 0xFFL);
  }

  @Test
  void hears_oneVoice_isItsPitchForAsLongAsItSounds() {
    chord(195, 0);
    Heard only = Ear.hears(sound(SECOND), 0).get(0);
    assertEquals(List.of(440), only.hertz());
    assertEquals(200, only.fromMilliseconds(), 20);
    assertEquals(500, only.milliseconds(), 40);
    assertEquals("loud and clear long 440 Hz", only.says());
  }

  @Test
  void hears_twoVoices_areAChord() {
    chord(195, 155);
    assertEquals(List.of("loud and clear long chord of 440 and 554 Hz"), heard());
  }

  @Test
  void hears_oneVoiceMissing_isTheOtherAlone() {
    chord(0, 130);
    assertEquals(List.of("loud and clear long 659 Hz"), heard());
  }

  @Test
  void hears_filterCapacitorOpen_isShrill() {
    chord(195, 155);
    capacities.remove(filter);
    assertEquals(List.of("loud and shrill long chord of 440 and 554 Hz"), heard());
  }

  @Test
  void hears_liftCapacitorOpen_isDull() {
    chord(195, 155);
    capacities.remove(lift);
    assertEquals(List.of("loud and dull long chord of 440 and 554 Hz"), heard());
  }

  @Test
  void hears_couplingOpen_isNothing() {
    chord(195, 155);
    capacities.remove(2);
    assertEquals(List.of(), heard());
  }

  @Test
  void hears_amplifierDead_isNothing() {
    chord(195, 155);
    amplifiers.clear();
    assertEquals(List.of(), heard());
  }

  @Test
  void hears_quietVoice_isSoft() {
    // 3 of 15 of a third of a volt, times 47/43: 73 mV.
    chord(195, 0);
    words.put("loudness", 0x03L);
    assertEquals(List.of("soft and clear long 440 Hz"), heard());
  }

  @Test
  void hears_noiseAlone_isNoiseWhateverItsPace() {
    for (long pace : new long[] {1, 4, 12, 31}) {
      words.clear();
      words.put("noise", pace);
      words.put("shared", 0x0FL);
      List<Heard> heard = Ear.hears(sound(SECOND), 0);
      assertTrue(heard.stream().allMatch(Heard::noise), "pace " + pace + ": " + heard);
      assertTrue(heard.stream().allMatch(h -> h.hertz().isEmpty()), "pace " + pace + ": " + heard);
    }
  }

  @Test
  void hears_voiceInNoise_isBoth() {
    chord(195, 0);
    words.put("noise", 1L);
    words.put("shared", 0x0FL);
    List<Heard> heard = Ear.hears(sound(SECOND), 0);
    assertEquals(1, heard.size(), heard.toString());
    assertEquals("loud long 440 Hz with noise", heard.get(0).says());
  }

  @Test
  void hears_eachVoiceByItself_isTheSemitoneOfItsRegister() {
    for (long n = 20; n <= 1300; n += n / 9 + 3) {
      words.clear();
      chord(n, 0);
      int right = Tones.semitone(1_375_000.0 / 16 / n);
      List<Heard> heard = Ear.hears(sound(SECOND), 0);
      assertEquals(1, heard.size(), n + ": " + heard);
      // A pitch within a tenth of a semitone of the border may fall to either side.
      double above = 12 * Math.log(1_375_000.0 / 16 / n / 440) / Math.log(2);
      if (Math.abs(above - Math.floor(above) - 0.5) > 0.1) {
        assertEquals(List.of(right), heard.get(0).hertz(), "n = " + n);
      }
    }
  }

  @Test
  void hears_sharedDecay_diesAway() {
    chord(195, 155);
    words.put("shared", 0x30L);
    words.put("decay", 8L);
    words.put("from-decay", 275_000L);
    // A sixteenth every 16,384 cycles of 727 ns: 191 ms in all.
    Heard only = Ear.hears(sound(SECOND), 0).get(0);
    assertEquals(List.of(440, 554), only.hertz());
    assertEquals(190, only.milliseconds(), 30);
  }
}
