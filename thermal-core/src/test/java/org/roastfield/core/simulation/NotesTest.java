package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Results beyond what the model knows say so. */
class NotesTest {

  private static final Chamber PIT =
      Chamber.steady(Temperatures.celsius(120), 0.03, MoistAir.STANDARD_PRESSURE);

  private static List<String> subjects(Stage... stages) {
    Cut cut = new Cut(Cylinder.ofDiameter(0.03), Bodies.CONSTANT, Bodies.START);
    return Simulator.withDefaults().run(Cook.of(cut, stages)).orElseThrow().notes().stream()
        .map(Note::subject)
        .toList();
  }

  @Test
  void anOrdinaryCook_hasNoNotes() {
    SurfaceLaw law = PIT.around(6, 0.92, 0.3, 0.98);
    assertEquals(List.of(), subjects(Stage.allRound("roast", law, StageEnd.after(1800))));
  }

  @Test
  void aFaceThatStaysWetForDays_isNoted() {
    SurfaceLaw wet = PIT.around(6, 0.92, 1, 0.98);
    assertEquals(List.of("water"), subjects(Stage.allRound("roast", wet, StageEnd.after(80_000))));
  }

  @Test
  void aCoreBeyondBoiling_isNoted() {
    SurfaceLaw hot = new Convection(30, Signal.constant(Temperatures.celsius(160)));
    List<String> found = subjects(Stage.allRound("roast", hot, StageEnd.after(8000)));
    assertEquals(List.of("boiling inside"), found);
  }

  @Test
  void endRulesThatWereMetBeforeTheyBegan_areNoted() {
    SurfaceLaw law = PIT.around(6, 0.92, 0.3, 0.98);
    Stage roast = Stage.allRound("roast", law, StageEnd.after(1800));
    Stage late = Stage.allRound("rest", law, StageEnd.at(600));
    Stage met = Stage.allRound("warm", law, StageEnd.coreRisesTo(Bodies.START - 1, 600));
    Cut cut = new Cut(Cylinder.ofDiameter(0.03), Bodies.CONSTANT, Bodies.START);
    List<Note> notes =
        Simulator.withDefaults().run(Cook.of(cut, met, roast, late)).orElseThrow().notes();
    assertEquals(2, notes.size());
    assertTrue(notes.get(0).text().endsWith("was met when it began"), notes.get(0)::text);
    assertEquals(
        "stage \"rest\" took no time: its end rule, \"at 600.0 s\", was over before it began",
        notes.get(1).text());
  }

  @Test
  void temperaturesInRules_areShownWithoutTheDigitsOfTheConversion() {
    String text = StageEnd.coreRisesTo(Temperatures.celsius(113.9), 600).description();
    assertEquals("core rises to 113.9 °C", text);
  }
}
