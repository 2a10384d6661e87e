package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.synthetic.Departure;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;
import org.roastfield.lab.synthetic.SyntheticCook;
import org.roastfield.lab.synthetic.SyntheticCooker;

/** Made-up cooks for these tests. */
final class CookerFixtures {

  static final SyntheticCooker PIT = SyntheticCooker.boathouse().get(0);

  private CookerFixtures() {}

  static MadeCook made(
      ScenarioCut cut, SyntheticCooker cooker, long seed, Departure... departures) {
    SyntheticCook recipe =
        new SyntheticCook(
            "syn-" + cut.word() + "-" + seed,
            cut,
            cooker,
            cut.setting(),
            seed,
            SyntheticCook.Split.FIT,
            Set.of(departures));
    return assertInstanceOf(MadeCook.class, recipe.make());
  }

  static CookFile file(MadeCook made) {
    byte[] yaml = made.log().cook().orElseThrow().getBytes(StandardCharsets.UTF_8);
    return CookFileReader.parse("cook.yaml", yaml);
  }

  /** With another statement of the emissivity. */
  static CookFile file(MadeCook made, String emissivity) {
    String yaml = made.log().cook().orElseThrow().replace("emissivity: 0.92", emissivity);
    return CookFileReader.parse("cook.yaml", yaml.getBytes(StandardCharsets.UTF_8));
  }

  static LoggedCase logged(MadeCook made) {
    return LoggedCase.of(file(made), made.log(), LogSpan.ALL, Optional.empty());
  }
}
