package org.roastfield.lab.trial;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.plan.Fires;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Role;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.plan.StageRoles;

/**
 * A kind of cook on trial: a round loin in gentle heat, a sear rolled over a grate, a rest under
 * foil. All of it is a cook file and what plans make of one.
 */
final class TrialKind {

  /** Numbers of kinds; from the eleventh on they are the first ten again. */
  static final int COUNT = 20;

  /** Rest at least [s]. */
  static final double REST = 900;

  /** Sear [s]: 8 turns of 25 s. */
  static final double SEAR = 200;

  static final int LENGTH_MM = 310;

  private static final String TEXT =
      """
      roastfield: cook/1
      name: cook on trial
      made-up: true
      starts: 2026-06-13T12:00
      altitude: 0 m
      cut:
        food: pork
        shape: cylinder
        diameter: %d mm
        length: %d mm
        start-temperature: 8 °C
        material: pork loin
        emissivity: 0.92
        water-activity: 0.98
      stages:
        - name: gentle heat
          chamber: {air: %d °C, humidity-ratio: 0.035, heat-transfer: 6 W/(m²·K)}
          wetness: %s
          end: {core: %d °C, at-latest: 10 h}
        - name: sear
          chamber: {air: 180 °C, walls: 200 °C, heat-transfer: 10 W/(m²·K)}
          wetness: 0
          contact: {plate: 260 °C, conductance: 250 W/(m²·K), share: 25 %%}
          turns: {count: 8, every: 25 s, sides: 4}
        - name: rest
          chamber: {air: 22 °C, heat-transfer: 6 W/(m²·K)}
          emissivity: 0.3
          wetness: 0
          end: {after: 15 min}
      """;

  /** A usual carryover, by which logged cooks are pulled early [K]. */
  private static final int CARRYOVER = 5;

  private final int diameter;
  private final int setting;
  private final int wish;
  private final VariedCook planned;
  private final VariedCook drying;

  private TrialKind(int diameter, int setting, int wish) {
    this.diameter = diameter;
    this.setting = setting;
    this.wish = wish;
    this.planned = cook("0.3");
    this.drying = cook("drying");
  }

  /** Kind of a number: 70 to 106 mm, 105 to 125 °C, 57 to 65 °C. */
  static TrialKind of(int number) {
    return new TrialKind(70 + 4 * (number % 10), 105 + 5 * (number % 5), 57 + 2 * (number * 7 % 5));
  }

  private VariedCook cook(String wetness) {
    String text = TEXT.formatted(diameter, LENGTH_MM, setting, wetness, wish - CARRYOVER);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return VariedCook.planned(CookFileReader.parse("cook.yaml", bytes), Probe.CORE);
  }

  /** The cook as plans see it. */
  VariedCook planned() {
    return planned;
  }

  /** The same with a face that dries and is fed. */
  VariedCook drying() {
    return drying;
  }

  CookFile file() {
    return planned.file();
  }

  List<Role> roles() {
    return StageRoles.of(file());
  }

  /** The cook for a planner. */
  PlannedCook forPlanner() {
    return new PlannedCook(planned, roles(), probe())
        .with(Fires.of(kelvin -> point -> planned.apply(planned.hotter(point, kelvin))));
  }

  /** Name of its display. */
  String probe() {
    return planned.probe(planned.channels().get(0));
  }

  /** Wish for the final core [K]. */
  double wish() {
    return wish + 273.15;
  }

  /** Stated weight [kg]. */
  double weight() {
    return file().extent().orElseThrow().mass();
  }
}
