package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.FaultUniverse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mistakes of people and instruments, and boards that fail otherwise than assumed. */
class MisreadingsTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final FaultDictionary DICTIONARY = ShippedDictionaries.of(SORREL).orElseThrow();
  private static final Suspects SUSPECTS = Suspects.of(FaultUniverse.of(SORREL));
  private static final Readings RIGHT = new TrueReadings(DICTIONARY);

  private static Misreadings misreadings(double bench, double told) {
    return new Misreadings(RIGHT, DICTIONARY, ErrorRates.shipped(), bench, told, 7);
  }

  private static List<Job> jobs() {
    return new Population(DICTIONARY, SUSPECTS, new Signs(SORREL, DICTIONARY), s -> "any")
        .draw(300, 3);
  }

  @Test
  void readings_thatAreNeverWrong_areRight() {
    for (Job job : jobs()) {
      assertEquals(RIGHT.shows(job, "current"), misreadings(0, 0).shows(job, "current"));
      assertEquals(job.complaint(), misreadings(0, 0).complaint(job));
    }
  }

  @Test
  void readings_thatAreAlwaysWrong_areWrongInTheSameWayAgain() {
    Misreadings wrong = misreadings(1, 0);
    for (Job job : jobs()) {
      String seen = wrong.shows(job, "current");
      assertNotEquals(RIGHT.shows(job, "current"), seen);
      assertEquals(seen, wrong.shows(job, "current"));
    }
  }

  /** 300 jobs, 5 in 100 wrong: 15, and four standard deviations are 15. */
  @Test
  void readings_ofWhichOneInTwentyIsWrong_areWrongAboutSoOften() {
    Misreadings some = misreadings(0.05, 0);
    long wrong =
        jobs().stream()
            .filter(j -> !some.shows(j, "current").equals(RIGHT.shows(j, "current")))
            .count();
    assertTrue(wrong > 0 && wrong < 31, "wrong: " + wrong);
  }

  /** Whoever brings a board has something to say of it. */
  @Test
  void owner_howeverMistaken_complainsOfSomething() {
    Misreadings wrong = misreadings(0, 0.5);
    for (Job job : jobs()) {
      Complaint complaint = wrong.complaint(job);
      boolean odd =
          complaint.told().stream()
              .anyMatch(
                  t ->
                      !t.outcome()
                          .equals(
                              DICTIONARY
                                  .outcomes(DICTIONARY.look(t.look()).getAsInt())
                                  .get(FaultDictionary.HEALTHY)));
      assertEquals(job.complaint().retest().isEmpty(), odd);
    }
  }

  /** One fault in ten hidden: of some 3,750 about 375, four standard deviations are 73. */
  @Test
  void otherWorld_hidesATenthAndKeepsWeightsWithinTwice() {
    OtherWorld world = OtherWorld.of(SUSPECTS, 11);
    assertEquals(SUSPECTS.all().size() / 10.0, world.hidden().size(), 75);
    assertEquals(SUSPECTS.all().size(), world.hidden().size() + world.listed().all().size());
    for (Suspect suspect : SUSPECTS.all()) {
      double times = world.faults().of(suspect.fault()).weight() / suspect.weight();
      assertTrue(times >= 0.5 && times <= 2, suspect.fault() + ": " + times);
      assertEquals(
          !world.hidden().contains(suspect.fault()), world.listed().contains(suspect.fault()));
    }
  }
}
