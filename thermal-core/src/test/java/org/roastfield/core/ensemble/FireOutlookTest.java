package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FireNeeds;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;

class FireOutlookTest {

  private static final Outside OUTSIDE = new Outside(288, 0, 0.007, MoistAir.STANDARD_PRESSURE);

  @Test
  void outlook_isThatOfItsMembers() {
    FireDemand demand = FireDemand.gentle(OUTSIDE, 1, 383, 7200);
    List<FirePit> pits = List.of(FirePit.ceramic(), FirePit.brickAndSteel(), FirePit.thinSteel());
    FireOutlook outlook = FireOutlook.of(pits, demand);
    FireNeeds brick = FireNeeds.of(FirePit.brickAndSteel(), demand);
    assertEquals(brick.beforeOn(), outlook.beforeOn().median(), "between thin steel and ceramic");
    assertEquals(3, outlook.fuel().size());
    double most = FireNeeds.of(FirePit.ceramic(), demand).beforeOn();
    assertEquals(most, outlook.beforeOn().quantile(1));
  }

  @Test
  void pitThatNeverGetsWarm_isInNoDistribution() {
    FirePit steel = FirePit.thinSteel();
    FirePit choked = new FirePit(steel.walls(), new FirePit.Vents(1e-5, 0.1, 0.3), steel.bed());
    FireDemand demand = FireDemand.gentle(OUTSIDE, 0.5, 450, 7200);
    FireOutlook outlook = FireOutlook.of(List.of(steel, choked), demand);
    assertEquals(1, outlook.fuel().size());
    assertEquals(2, outlook.lighting().size());
    assertTrue(outlook.fuel().median() > 0);
  }
}
