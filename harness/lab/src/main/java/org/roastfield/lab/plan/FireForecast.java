package org.roastfield.lab.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.ensemble.Distribution;
import org.roastfield.core.ensemble.FireOutlook;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.PitKind;
import org.roastfield.lab.files.PlanWishes;
import org.roastfield.lab.files.StageSetup;
import org.roastfield.lab.pit.PitDraws;

/**
 * What the fire of a plan needs, over pits that the stated one may be.
 *
 * @param kind of the pit
 * @param pits how many were drawn
 * @param warm how many of them get warm
 * @param beforeOn from the match to when the cut goes on [s]
 * @param ramp from open vents to the air of the sear [s]; empty for a sear over metal or coals
 * @param fuel to begin with [kg]
 * @param sears whether the cook has a sear over metal or coals, which {@code fuel} is without
 */
public record FireForecast(
    PitKind kind,
    int pits,
    int warm,
    Spread beforeOn,
    Optional<Spread> ramp,
    Spread fuel,
    boolean sears) {

  private static final int PITS = 200;
  static final double OUTSIDE = Temperatures.celsius(15);
  private static final double OUTSIDE_HUMIDITY = 0.007;

  /**
   * Forecast for a cook.
   *
   * @param gentle how long the cut is on the gentle heat [s]
   * @throws UnplannableException if no such pit gets warm enough
   */
  static FireForecast of(
      CookFile file, List<Role> roles, PlanWishes.Pit stated, double gentle, long seed) {
    try {
      return demanded(file, roles, stated, gentle, seed);
    } catch (IllegalArgumentException e) {
      throw new UnplannableException("plan.pit: " + e.getMessage());
    }
  }

  private static FireForecast demanded(
      CookFile file, List<Role> roles, PlanWishes.Pit stated, double gentle, long seed) {
    double setting = stage(file, roles, Role.GENTLE).orElseThrow().upper().air();
    Outside outside =
        new Outside(
            stated.outside().orElse(OUTSIDE), 0, OUTSIDE_HUMIDITY, MoistAir.STANDARD_PRESSURE);
    FireDemand demand =
        FireDemand.gentle(outside, stated.like().glowing(), setting, gentle)
            .withLoad(PitDraws.USUAL_LOAD);
    Optional<FireDemand.Sear> sear = sear(file, roles);
    if (sear.isPresent()) {
      demand = demand.withSear(sear.get());
    }
    List<FirePit> pits = PitDraws.of(stated.like().pit(), PITS, seed);
    FireOutlook outlook = FireOutlook.of(pits, demand);
    if (outlook.fuel().size() == 0) {
      throw new UnplannableException(
          String.format(
              Locale.ROOT,
              "plan.pit: none of %d pits like %s reaches %.0f °C and what follows within six hours",
              PITS,
              stated.like().word(),
              Temperatures.toCelsius(setting)));
    }
    return new FireForecast(
        stated.like(),
        PITS,
        outlook.fuel().size(),
        spread(outlook.beforeOn()),
        sear.map(one -> spread(outlook.ramp())),
        spread(outlook.fuel()),
        sear.isEmpty() && roles.contains(Role.SEAR));
  }

  /** A sear in hot air under the lid; over metal or open coals it is not the gas that counts. */
  private static Optional<FireDemand.Sear> sear(CookFile file, List<Role> roles) {
    return stage(file, roles, Role.SEAR)
        .filter(stage -> stage.upper().contact().isEmpty() && stage.upper().bed().isEmpty())
        .map(
            stage ->
                new FireDemand.Sear(
                    FireDemand.Sear.Place.COVERED,
                    stage.upper().air(),
                    file.cook().stages().get(stage.firstStage()).end().longest(0)));
  }

  private static Optional<StageSetup> stage(CookFile file, List<Role> roles, Role role) {
    return file.stages().stream()
        .filter(stage -> roles.get(stage.firstStage()) == role)
        .findFirst();
  }

  private static Spread spread(Distribution found) {
    return new Spread(found.quantile(0.1), found.median(), found.quantile(0.9));
  }

  /** When to light before the cut goes on [s]: nine of ten such pits are warm by then. */
  double lead() {
    return 60 * Math.ceil(beforeOn.high() / 60);
  }

  /**
   * In words.
   *
   * @param lead that the plan takes before the cut goes on [s]
   */
  PlanLine line(double lead) {
    String text =
        String.format(
            Locale.ROOT,
            "lit %s before it goes on; a pit of %s takes %s to %s from the match, and %.1f to %.1f kg"
                + " of charcoal to begin with",
            Words.duration(lead),
            kind.word().replace('-', ' '),
            Words.duration(beforeOn.low()),
            Words.duration(beforeOn.high()),
            fuel.low(),
            fuel.high());
    String beside = sears ? ", without what the sear takes" : "";
    String pause =
        ramp.map(
                wait ->
                    "; from open vents to the sear's air "
                        + Words.duration(wait.low())
                        + " to "
                        + Words.duration(wait.high()))
            .orElse("");
    String never = warm < pits ? "; " + (pits - warm) + " of " + pits + " such pits never do" : "";
    return new PlanLine("lighting", text + beside + pause + never, "assumed");
  }
}
