package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;
import org.roastfield.lab.synthetic.SyntheticCook;
import org.roastfield.lab.synthetic.SyntheticCooker;

/**
 * A profile that one more log updates is that of all logs together, but for what a normal
 * distribution cannot carry from one to the next: the stated error.
 */
class UpdatedProfileTest {

  /**
   * How far a mean may be off, in posterior spreads: of eight that were looked at the worst two
   * were 0.11 and 0.20 off.
   */
  private static final double MEAN = 0.25;

  /** How far a spread may be off, as a share of it: 0.02 was the worst. */
  private static final double SPREAD = 0.05;

  /** Two of the cooker, and of each cook what they are most easily taken for. */
  private static final Set<String> FREE =
      Set.of("convection", "walls", "convection-of-cook", "size", "wetness");

  private static LoggedCase log(long seed) {
    SyntheticCook recipe =
        new SyntheticCook(
            "syn-loin-" + seed,
            ScenarioCut.PORK_LOIN,
            SyntheticCooker.boathouse().get(0),
            ScenarioCut.PORK_LOIN.setting(),
            seed,
            SyntheticCook.Split.FIT,
            Set.of());
    LogPackage log = assertInstanceOf(MadeCook.class, recipe.make()).log();
    byte[] text = log.cook().orElseThrow().getBytes(StandardCharsets.UTF_8);
    CookFile file = CookFileReader.parse("cook.yaml", text);
    return LoggedCase.of(file, log, LogSpan.ALL, Optional.empty());
  }

  private static CookerProfile learned(Optional<CookerProfile> before, List<LoggedCase> logs) {
    CookerSearch search =
        new CookerSearch(
            before,
            parameter -> FREE.contains(parameter.id()),
            Simulator.withDefaults(),
            progress -> {});
    CookerSearch.Found found = search.find(logs, 1, false, 1);
    List<String> hashes = Collections.nCopies(logs.size(), "0".repeat(64));
    return search.profile("pit", found, found.belief(), hashes, "as-stated", true);
  }

  @Test
  void oneMoreLog_isAsIfAllHadComeTogether() {
    List<LoggedCase> logs = List.of(log(41), log(42), log(43));
    Optional<CookerProfile> updated = Optional.empty();
    for (LoggedCase each : logs) {
      updated = Optional.of(learned(updated, List.of(each)));
    }
    Prior joint = learned(Optional.empty(), logs).belief();
    Prior chain = updated.orElseThrow().belief();
    assertEquals(joint.parameters(), chain.parameters());
    for (int p = 0; p < joint.size(); p++) {
      String id = joint.parameters().get(p).id();
      assertEquals(joint.mean()[p], chain.mean()[p], MEAN * joint.spread(p), id);
      assertEquals(joint.spread(p), chain.spread(p), SPREAD * joint.spread(p), id);
    }
    assertEquals(3, updated.orElseThrow().logs().size());
  }
}
