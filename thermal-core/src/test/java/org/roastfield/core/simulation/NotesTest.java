package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/** Results beyond what the model knows say so. */
class NotesTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  private static final Chamber PIT = Chamber.steady(Temperatures.celsius(120), 0.03, PRESSURE);

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
  void faceThatIsGivenMoreWaterThanTheCutHas_isNoted() {
    SurfaceLaw wet = PIT.around(6, 0.92, 1, 0.98);
    SimulationResult result = run(loin(0.03), Stage.allRound("roast", wet, StageEnd.after(80_000)));
    WaterAccount account = result.water().upper();
    assertEquals(0.0075 * loin(0.03).material().moisture().content(), account.stock(), 1e-12);
    assertTrue(account.evaporated() > account.stock());
    Note note = result.notes().get(0);
    assertEquals("water", note.subject());
    assertTrue(note.text().contains(" kg/m² in the cut behind it"), note::text);
    assertTrue(note.text().contains("The wetness of each stage is a given number"), note::text);
  }

  /** Each face of a slab has half of the water. */
  @Test
  void oneFaceOfASlabThatIsGivenTooMuch_isNoted() {
    SurfaceLaw wet = PIT.around(6, 0.92, 1, 0.98);
    SurfaceLaw dry = PIT.around(6, 0.92, 0, 0.98);
    Material loin = Materials.named("pork loin").material();
    Cut cut = new Cut(Slab.ofThickness(0.02), loin, Bodies.START);
    SimulationResult result = run(cut, Stage.ofFaces("roast", wet, dry, StageEnd.after(40_000)));
    assertEquals(1, result.notes().stream().filter(n -> n.text().contains("left a face")).count());
    assertTrue(result.water().upper().left() < 0);
    assertTrue(result.water().lower().left() > 0);
  }

  @Test
  void faceThatDries_isGivenNoMoreThanTheCutHas() {
    SimulationResult result = dried(98);
    WaterAccount account = result.water().upper();
    assertTrue(account.evaporated() > 0.5 * account.stock());
    assertTrue(account.left() > 0);
    assertEquals(0, tooMuch(result).size());
  }

  /** Boiling dries a thin cut through: what its crust boils off had dripped or been fed before. */
  @Test
  void crustThroughAThinCut_isNoted() {
    SimulationResult result = dried(120);
    WaterAccount account = result.water().upper();
    assertTrue(account.left() < 0);
    Note note = tooMuch(result).get(0);
    assertTrue(note.text().contains("A crust this thick"), note::text);
  }

  private static SimulationResult dried(double air) {
    Chamber oven = Chamber.steady(Temperatures.celsius(air), 0.03, PRESSURE);
    Evaporation water = Evaporation.of(1, 6, 0.98, oven.vapourPressure(), PRESSURE);
    SurfaceLaw drying = DryingFace.ofMeat(oven.around(6, 0.92, 0, 1), water, 1, PRESSURE);
    return run(loin(0.03), Stage.allRound("roast", drying, StageEnd.after(80_000)));
  }

  private static List<Note> tooMuch(SimulationResult result) {
    return result.notes().stream().filter(note -> note.text().contains("left a face")).toList();
  }

  private static Cut loin(double diameter) {
    Material loin = Materials.named("pork loin").material();
    return new Cut(Cylinder.ofDiameter(diameter), loin, Bodies.START);
  }

  private static SimulationResult run(Cut cut, Stage stage) {
    return Simulator.withDefaults().run(Cook.of(cut, stage)).orElseThrow();
  }

  @Test
  void aCoreBeyondBoiling_isNoted() {
    SurfaceLaw hot = new Convection(30, Signal.constant(Temperatures.celsius(160)));
    List<String> found = subjects(Stage.allRound("roast", hot, StageEnd.after(8000)));
    assertEquals(List.of("boiling inside"), found);
  }

  /** One law for each way in which air and vapour are said. */
  static List<SurfaceLaw> moistInAFanOven() {
    Chamber oven = Chamber.steady(Temperatures.celsius(200), 0.015, MoistAir.STANDARD_PRESSURE);
    SurfaceLaw dry = oven.around(25, 0.9, 0, 1);
    Evaporation wet =
        Evaporation.of(1, 25, 0.98, oven.vapourPressure(), MoistAir.STANDARD_PRESSURE);
    FilmCoefficient wind =
        FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, 0.03, 3, MoistAir.STANDARD_PRESSURE);
    SurfaceLaw still = oven.around(8, 0.9, 0.3, 0.98);
    return List.of(
        oven.around(25, 0.9, 0.3, 0.98),
        oven.around(25, 0.9, 0.3, 0.98, 30),
        oven.around(wind, 0.9, 0.3, 0.98),
        DryingFace.ofMeat(dry, wet, 1, MoistAir.STANDARD_PRESSURE),
        SurfaceLaw.shared(0.5, oven.around(25, 0.9, 0.3, 0.98), still));
  }

  @ParameterizedTest
  @MethodSource("moistInAFanOven")
  void aMoistFaceInHotAirThatMoves_isNoted(SurfaceLaw law) {
    Stage roast = Stage.allRound("roast", law, StageEnd.after(300));
    assertEquals(List.of(Note.HOT_MOVING_AIR), subjects(roast));
    Cut cut = new Cut(Cylinder.ofDiameter(0.03), Bodies.CONSTANT, Bodies.START);
    String text =
        Simulator.withDefaults().run(Cook.of(cut, roast)).orElseThrow().notes().get(0).text();
    assertTrue(text.startsWith("Loss and time of roast are rough"), text);
    assertEquals(law instanceof DryingFace, text.contains("Evaporation alone"), text);
  }

  static List<SurfaceLaw> otherwise() {
    Chamber oven = Chamber.steady(Temperatures.celsius(200), 0.015, MoistAir.STANDARD_PRESSURE);
    return List.of(
        oven.around(8, 0.9, 0.3, 0.98),
        oven.around(25, 0.9, 0.05, 0.98),
        oven.around(25, 0.9, 0.3, 0.98).under(Wrap.FOIL),
        Chamber.steady(Temperatures.celsius(140), 0.015, MoistAir.STANDARD_PRESSURE)
            .around(25, 0.9, 0.3, 0.98));
  }

  @ParameterizedTest
  @MethodSource("otherwise")
  void stillAir_coolerAir_aWrapOrADryFace_areNot(SurfaceLaw law) {
    assertEquals(List.of(), subjects(Stage.allRound("roast", law, StageEnd.after(300))));
  }

  /** Air that gets hot on the way counts, and what comes after the last computed stage does not. */
  @Test
  void airThatGetsHot_isNoted() {
    Signal air = SampledSignal.of(new double[] {0, 1800}, new double[] {Bodies.START, 500}, 1800);
    SurfaceLaw law =
        new Chamber(air, air, Signal.constant(1500), MoistAir.STANDARD_PRESSURE)
            .around(25, 0.9, 0.3, 0.98);
    assertEquals(List.of(), subjects(Stage.allRound("early", law, StageEnd.after(300))));
    assertEquals(
        List.of(Note.HOT_MOVING_AIR), subjects(Stage.allRound("whole", law, StageEnd.after(1700))));
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
