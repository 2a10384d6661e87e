package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;
import org.roastfield.lab.synthetic.SyntheticCooker;
import org.roastfield.lab.synthetic.TrueValues;

class VariedCookTest {

  private static final Simulator SIMULATOR = Simulator.withDefaults();

  /** A seed whose lost chamber readings hide no opening of the lid, which no fit could know. */
  private static final int NO_LID_IN_A_GAP = 34;

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void planned_withoutNumbers_isTheCookFile(boolean pork) {
    byte[] yaml = pork ? Published.porkLoinBytes() : Published.lambLegBytes();
    CookFile file = CookFileReader.parse("cook.yaml", yaml);
    Cook cook = VariedCook.planned(file).apply(ParameterPoint.empty());
    assertEquals(file.cook().cut(), cook.cut());
    SimulationResult expected = SIMULATOR.run(file.cook()).orElseThrow();
    SimulationResult actual = SIMULATOR.run(cook).orElseThrow();
    assertEquals(expected.endTime(), actual.endTime());
    for (int i = 0; i <= 50; i++) {
      double time = expected.endTime() * i / 50;
      assertEquals(expected.core().at(time), actual.core().at(time));
      assertEquals(expected.upperSurface().at(time), actual.upperSurface().at(time));
    }
  }

  /**
   * With the true numbers the cook of a log is the one that made it, but for the noise of the
   * chamber's probe and its averages. The emissivity, which is no number of it, is stated.
   */
  @ParameterizedTest
  @EnumSource(ScenarioCut.class)
  void logged_withTrueNumbers_isTheTruth(ScenarioCut cut) {
    MadeCook made = CookerFixtures.made(cut, CookerFixtures.PIT, NO_LID_IN_A_GAP);
    LoggedCase logged =
        LoggedCase.of(
            CookerFixtures.file(made, "emissivity: " + made.values().emissivity()),
            made.log(),
            LogSpan.ALL,
            Optional.empty());
    ParameterPoint truth = truth(made, logged);
    SimulationResult actual = SIMULATOR.run(logged.cook().apply(truth)).orElseThrow();
    double last = made.log().readings().end();
    for (int i = 0; i <= 50; i++) {
      double time = last * i / 50;
      assertEquals(made.result().core().at(time), actual.core().at(time), 0.2, "at " + time);
    }
  }

  private static ParameterPoint truth(MadeCook made, LoggedCase logged) {
    TrueValues values = made.values();
    SyntheticCooker cooker = made.recipe().cooker();
    ParameterPoint point = ParameterPoint.empty();
    for (Parameter parameter : logged.parameters().list()) {
      double value =
          switch (parameter.id()) {
            case "convection" -> cooker.convection();
            case "convection-of-cook" -> values.convection();
            case "walls" -> cooker.wallOffset();
            case "air-bias" -> cooker.chamberBias();
            case "humidity" -> cooker.humidityRatio() / 0.035;
            case "contact" -> values.bars() / TrueValues.STATED.bars();
            case "rest" -> values.rest() / TrueValues.STATED.rest();
            case "size" -> values.size();
            case "diffusivity" -> values.diffusivity();
            case "wetness" -> values.drive();
            case "start" -> values.startTemperature() - TrueValues.STATED.startTemperature();
            case "probe-offset" -> values.probeOffset();
            case "probe-bias" -> values.probeBias();
            default -> throw new IllegalStateException(parameter.id());
          };
      point = point.with(parameter.id(), value, 1);
    }
    return point;
  }

  @Test
  void stages_areTimedByTheLog() {
    MadeCook made = CookerFixtures.made(ScenarioCut.PORK_LOIN, CookerFixtures.PIT, 31);
    Cook cook = CookerFixtures.logged(made).cook().apply(ParameterPoint.empty());
    SimulationResult result = SIMULATOR.run(cook).orElseThrow();
    List<String> names = result.stages().stream().map(stage -> stage.name()).toList();
    assertEquals(List.of("gentle heat", "sear", "rest"), names);
    for (int i = 0; i < 2; i++) {
      assertEquals(
          made.milestones().get(i).time(), result.stages().get(i).end(), 0.5, names.get(i));
    }
  }

  @Test
  void parameters_areThoseThatMatter() {
    MadeCook made = CookerFixtures.made(ScenarioCut.BEETROOT, CookerFixtures.PIT, 31);
    List<String> ids =
        CookerFixtures.logged(made).parameters().list().stream().map(Parameter::id).toList();
    assertTrue(ids.contains("rest"));
    assertTrue(!ids.contains("contact"), "a beetroot is not seared: " + ids);
    CookFile file = CookerFixtures.file(made);
    List<String> planned =
        VariedCook.planned(file).parameters().list().stream().map(Parameter::id).toList();
    assertTrue(!planned.contains("air-bias"), "no probe in a plan: " + planned);
    assertEquals(
        CookParameters.SIZE,
        VariedCook.planned(file)
            .parameters()
            .get(VariedCook.planned(file).parameters().index("size")));
  }
}
