package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.attempt.Debrief;
import faultfinch.attempt.Hunch;
import faultfinch.attempt.Note;
import faultfinch.bench.Move;
import faultfinch.bench.Reading;
import faultfinch.fx.Errands;
import faultfinch.workbench.WorkbenchViewModel.Drawer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkbenchViewModelTest {

  private final List<Debrief> debriefs = new ArrayList<>();

  private WorkbenchViewModel playing(ScriptedPlay play) {
    return new WorkbenchViewModel(play, new Errands(Runnable::run, Runnable::run), debriefs::add);
  }

  private static Move move(String text) {
    return Move.parse(text);
  }

  @Test
  void guide_whenItsActIsDone_asksForTheNextAndThenGoes() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    assertTrue(model.asked().get().says().startsWith("Switch the board on"));
    model.togglePower();
    assertTrue(model.asked().get().says().startsWith("One column of bits is wrong"));
    model.act(move("look: probe U9.D0 at the pin"));
    assertEquals(Asked.NOTHING, model.asked().get());
  }

  @Test
  void move_made_isNotedWithWhatItShowed() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    model.togglePower();
    model.act(move("look: probe U9.D0 at the pin"));
    Note last = model.lastNotes().get(0);
    assertEquals(2, last.number());
    assertEquals("no light", last.reading().text());
  }

  @Test
  void notes_moreThanThree_keepTheLastThreeInSightNewestFirst() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    for (int i = 0; i < 5; i++) {
      model.togglePower();
    }
    assertEquals(List.of(5, 4, 3), model.lastNotes().stream().map(Note::number).toList());
  }

  @Test
  void display_looked_showsUntilThePowerGoes() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    model.togglePower();
    assertTrue(model.seen().get().isEmpty());
    model.lookAtScreen();
    assertTrue(model.seen().get().orElseThrow().reading() instanceof Reading.Picture);
    model.togglePower();
    assertTrue(model.seen().get().isEmpty());
  }

  @Test
  void move_againstARule_waitsForAWord() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    model.togglePower();
    model.act(move("take out: U3"));
    assertTrue(model.warning().get().isPresent());
    assertEquals(1, model.notes().size());
    model.leave();
    assertEquals(1, model.notes().size());
    model.act(move("take out: U3"));
    model.actAnyway();
    assertEquals(2, model.notes().size());
    assertTrue(model.warning().get().isEmpty());
  }

  @Test
  void pull_first_asksWhatYouThinkAndKeepsIt() {
    ScriptedPlay play = new ScriptedPlay(false);
    WorkbenchViewModel model = playing(play);
    model.act(move("exchange: U3"));
    assertTrue(model.hunch().get().isPresent());
    Hunch thought = new Hunch("U3", Hunch.Expectation.RIGHT_AGAIN);
    model.think(thought);
    assertEquals(List.of(thought), play.hunches());
    assertEquals(1, model.notes().size());
  }

  @Test
  void choices_atAPin_areItsOwnAndItsPartsAndNoOthers() {
    WorkbenchViewModel model = playing(new ScriptedPlay(false));
    Spot pin = model.board().plan().find("U9.D0").orElseThrow();
    List<String> texts = model.choices(pin).stream().map(c -> c.move().text()).toList();
    assertTrue(texts.contains("look: probe U9.D0 at the pin"));
    assertTrue(texts.contains("reseat: U9"));
    assertTrue(texts.stream().allMatch(t -> t.contains("U9")), texts.toString());
  }

  @Test
  void price_inACaseThatShowsThem_isSaidInWords() {
    WorkbenchViewModel model = playing(new ScriptedPlay(false));
    Choice pull =
        model.choices(new Spot.OnPart("U9")).stream()
            .filter(c -> c.move().text().equals("take out: U9"))
            .findFirst()
            .orElseThrow();
    assertEquals("4 min, 1 pull, risk 0.5 min", pull.price());
  }

  @Test
  void price_inTheFirstCase_isNotShown() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    assertTrue(model.choices(new Spot.OnPart("U9")).stream().allMatch(c -> c.price().isEmpty()));
  }

  @Test
  void decision_wrong_goesOnAndRight_leadsToTheDebrief() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    decide(model, "U4", "contact");
    assertFalse(model.passed().get());
    assertEquals("The board fails as before.", model.news().get());
    decide(model, "U9", "contact");
    assertTrue(model.passed().get());
    model.finish();
    assertTrue(debriefs.get(0).solved());
  }

  private static void decide(WorkbenchViewModel model, String ref, String kind) {
    DecideViewModel decide = model.decide();
    decide.suggest(new Spot.OnPart(ref));
    decide.kind().set(kind);
    decide.go();
    decide.yes();
  }

  @Test
  void decision_withSeveralPlaces_waitsForOneOfThem() {
    DecideViewModel decide = playing(new ScriptedPlay(true)).decide();
    decide.suggest(new Spot.OnPart("U9"));
    decide.kind().set("leg");
    assertEquals(List.of("U9.D0", "U9.D1"), decide.wheres());
    decide.go();
    assertFalse(decide.asking().get());
    decide.where().set("U9.D1");
    decide.go();
    assertTrue(decide.asking().get());
    assertEquals("U9.D1: leg", decide.wrong().get());
  }

  @Test
  void drawer_sameKeyAgain_shutsIt() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    model.toggle(Drawer.NOTEBOOK);
    model.toggle(Drawer.SUSPECTS);
    assertEquals(Drawer.SUSPECTS, model.drawer().get());
    model.toggle(Drawer.SUSPECTS);
    assertEquals(Drawer.SHUT, model.drawer().get());
  }

  @Test
  void move_whileAnotherIsMade_isNotTaken() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    WorkbenchViewModel model =
        new WorkbenchViewModel(
            new ScriptedPlay(true), new Errands(waiting::add, Runnable::run), debriefs::add);
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
    model.togglePower();
    assertTrue(model.busy().get());
    model.togglePower();
    assertEquals(1, waiting.size());
    waiting.remove().run();
    assertFalse(model.busy().get());
    assertTrue(model.status().get().powered());
  }

  @Test
  void typedNonsense_costsNothingAndSaysWhatWouldBeRight() {
    WorkbenchViewModel model = playing(new ScriptedPlay(true));
    model.say("frobnicate the lot");
    assertTrue(model.message().get().contains("right would be"), model.message().get());
    assertEquals(0, model.notes().size());
  }
}
