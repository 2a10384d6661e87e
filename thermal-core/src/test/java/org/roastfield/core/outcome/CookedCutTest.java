package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

class CookedCutTest {

  private static final Material MEAT = Material.constant("meat", 0.48, 1050, 3500);

  private static final List<Shape> SHAPES =
      List.of(Cylinder.ofDiameter(0.096), Sphere.ofDiameter(0.11), Slab.ofThickness(0.055));

  private static SurfaceLaw air(double celsius, double h) {
    return new Convection(h, Signal.constant(celsius + 273.15));
  }

  private static Cook cook(Shape shape, double hotter, boolean twoFaced) {
    List<Stage> stages = new ArrayList<>();
    SurfaceLaw gentle = air(115 + hotter, 18);
    SurfaceLaw sear = air(260 + hotter, 120);
    SurfaceLaw rest = air(22 + hotter, 11);
    stages.add(new Stage("gentle", gentle, gentle, StageEnd.after(6000)));
    stages.add(new Stage("sear", sear, twoFaced ? gentle : sear, StageEnd.after(200)));
    stages.add(new Stage("rest", rest, rest, StageEnd.after(1500)));
    return new Cook(new Cut(shape, MEAT, 281.15 + hotter), stages, List.of());
  }

  private static SimulationResult run(Cook cook, int cells) {
    Settings settings = Settings.withDefaults().withCells(cells);
    return Simulator.with(settings).run(cook).orElseThrow();
  }

  private static CookedCut cut(Cook cook, int cells) {
    return CookedCut.of(run(cook, cells));
  }

  @Test
  void shares_sumToOne() {
    for (Shape shape : SHAPES) {
      for (DonenessScale scale : List.of(DonenessScale.TRADE, DonenessScale.RESEARCH)) {
        Doneness doneness = cut(cook(shape, 0, false), 40).doneness(scale);
        double sum = doneness.shares().stream().mapToDouble(share -> share).sum();
        assertEquals(1, sum, 1e-12);
        assertTrue(doneness.shares().stream().allMatch(share -> share >= -1e-15));
      }
    }
  }

  @Test
  void rings_areWithinAFifthOfAMillimetreOfAFourTimesFinerGrid() {
    for (Shape shape : SHAPES) {
      for (boolean twoFaced : new boolean[] {false, true}) {
        if (twoFaced && !(shape instanceof Slab)) {
          continue;
        }
        for (double hotter : new double[] {-15, 0, 15}) {
          Cook cook = cook(shape, hotter, twoFaced);
          for (DonenessScale scale : List.of(DonenessScale.TRADE, DonenessScale.RESEARCH)) {
            Doneness coarse = cut(cook, 40).doneness(scale);
            Doneness fine = cut(cook, 160).doneness(scale);
            assertEquals(fine.target(), coarse.target());
            assertEquals(fine.upperRing(), coarse.upperRing(), 0.2e-3);
            assertEquals(fine.lowerRing(), coarse.lowerRing(), 0.2e-3);
            if (Double.isFinite(scale.end(fine.target()))) {
              assertTrue(fine.upperRing() > 0);
            }
          }
        }
      }
    }
  }

  @Test
  void hotterCook_isNoLessDone_withNoLessLethality_andNoMoreJuice() {
    for (Shape shape : SHAPES) {
      SimulationResult mild = run(cook(shape, 0, false), 40);
      CookedCut cold = CookedCut.of(mild);
      for (double hotter : new double[] {0.1, 3, 20}) {
        SimulationResult strong = run(cook(shape, hotter, false), 40);
        CookedCut hot = CookedCut.of(strong);
        for (double celsius = 40; celsius < 100; celsius += 5) {
          assertTrue(
              hot.highest().shareBelow(celsius + 273.15)
                  <= cold.highest().shareBelow(celsius + 273.15) + 1e-9);
        }
        // Equal numbers would pass the rest: these say that heat does something.
        assertTrue(
            hot.highest().mean() > cold.highest().mean() + 0.5 * hotter, shape + " " + hotter);
        double collagen = cold.over(FirstOrder.COLLAGEN::changed).least();
        assertTrue(collagen < 1 && hot.over(FirstOrder.COLLAGEN::changed).least() > collagen);
        assertTrue(
            hot.over(FirstOrder.MYOGLOBIN::changed).least()
                >= cold.over(FirstOrder.MYOGLOBIN::changed).least());
        assertTrue(Juice.of(strong).total() > Juice.of(mild).total());
        assertTrue(Tenderness.of(hot).actin() > Tenderness.of(cold).actin());
        Safety more = hot.safety(CutKind.INTACT);
        Safety less = cold.safety(CutKind.INTACT);
        assertTrue(more.lethality() >= less.lethality());
        assertTrue(hotter < 20 || more.lethality() > less.lethality());
        assertTrue(more.surfaceLethality() > less.surfaceLethality());
        assertTrue(
            Browning.of(hot.surface(), java.util.OptionalDouble.empty()).middle()
                > Browning.of(cold.surface(), java.util.OptionalDouble.empty()).middle());
      }
    }
  }

  @Test
  void histories_followTheTracesTheyCameFrom() {
    SimulationResult result = run(cook(SHAPES.get(0), 0, false), 40);
    CookedCut cut = CookedCut.of(result);
    assertEquals(0, cut.coldestPosition(), 0);
    double peak = result.corePeak(result.stage("rest")).temperature();
    assertEquals(peak, cut.coldest().highest(), 0.01);
    double half = cut.surface().firstRise(350).orElseThrow();
    assertEquals(350, result.upperSurface().at(half), 0.02);
    assertEquals(result.endTime(), cut.surface().duration(), 1e-9);
  }

  @Test
  void coldestPlace_ofASlabSearedOnOneSide_isNotItsMiddle() {
    CookedCut cut = cut(cook(SHAPES.get(2), 0, true), 40);
    assertTrue(cut.isTwoFaced());
    assertFalse(Math.abs(cut.coldestPosition()) < 1e-6, "" + cut.coldestPosition());
  }

  @Test
  void kinds_areTreatedApart() {
    CookedCut cut = cut(cook(SHAPES.get(0), 0, false), 40);
    for (CutKind kind : CutKind.values()) {
      Safety safety = cut.safety(kind);
      boolean tables = safety.findings().stream().anyMatch(f -> f.unit() == Finding.Unit.LOG);
      assertEquals(kind.hasHoldTables(), tables, kind.word());
      assertTrue(safety.findings().get(0).margin() < cut.coldest().highest() - 335.9);
      assertTrue(safety.findings().stream().allMatch(f -> f.chance().isEmpty()));
    }
    assertTrue(
        cut.safety(CutKind.POULTRY).findings().get(0).margin()
            < cut.safety(CutKind.GROUND).findings().get(0).margin());
  }

  /** A cut into which something went, or of which a face lies inside, is never asked for less. */
  @Test
  void openedMeat_isHeldAgainstMoreThanAnIntactCut() {
    double intact = strictest(CutKind.INTACT);
    for (CutKind kind : List.of(CutKind.TENDERISED, CutKind.ROLLED, CutKind.GROUND)) {
      assertTrue(strictest(kind) > intact + 5, kind.word());
    }
  }

  private static double strictest(CutKind kind) {
    return PublishedMinimum.of(kind).stream()
        .mapToDouble(PublishedMinimum::temperature)
        .max()
        .orElseThrow();
  }

  @Test
  void chance_isTheShareOfAnEnsembleThatMeets() {
    List<Safety> all = new ArrayList<>();
    for (double hotter : new double[] {-15, 0, 40, 60}) {
      all.add(cut(cook(SHAPES.get(0), hotter, false), 40).safety(CutKind.INTACT));
    }
    Finding finding = all.get(0).withChances(all).findings().get(0);
    long met = all.stream().filter(one -> one.findings().get(0).met()).count();
    assertTrue(met > 0 && met < 4, "" + met);
    assertEquals(met / 4.0, finding.chance().orElseThrow());
  }
}
