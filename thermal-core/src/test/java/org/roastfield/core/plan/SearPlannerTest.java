package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.parameter.ParameterPoint;

class SearPlannerTest {

  private static final PlanRequest REQUEST =
      PlanRequest.of(PlanCooks.loin(), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4));
  private static final ParameterPoint MIDDLE = SearPlanner.middle(PlanCooks.prior());

  private static SearSchedule sear(double duration, int rounds, SearSchedule.Order order) {
    return new SearSchedule(duration, rounds, order);
  }

  private static SearTrade trade(SearSchedule... schedules) {
    return SearPlanner.withDefaults().trade(REQUEST, List.of(schedules), 1800);
  }

  @Test
  void ownSchedule_isRead_andMadeAgain() {
    SearSchedule own = REQUEST.cook().sear(MIDDLE).orElseThrow();
    assertEquals(sear(200, 2, SearSchedule.Order.LAST), own);
    Cook cook = REQUEST.cook().at(MIDDLE);
    Cook again = REQUEST.cook().searedBy(own, MIDDLE).at(MIDDLE);
    assertEquals(cook.stages().size(), again.stages().size());
    for (int i = 0; i < cook.stages().size(); i++) {
      assertEquals(cook.stages().get(i).upper(), again.stages().get(i).upper());
      assertEquals(cook.stages().get(i).end(), again.stages().get(i).end());
    }
  }

  /** The first of them short and on hotter air than the last: neither takes from the other. */
  @Test
  void searsFirstAndLast_areReadAndMadeAgain_eachAsItIs() {
    Cook last = REQUEST.cook().at(MIDDLE);
    Stage like = last.stages().get(last.stages().size() - 2);
    Stage first = Stage.allRound("first", like.upper(), StageEnd.after(40));
    Function<ParameterPoint, Cook> cooks =
        point -> {
          Cook cook = REQUEST.cook().at(point);
          List<Stage> stages = new ArrayList<>(cook.stages());
          stages.add(0, first);
          return new Cook(cook.cut(), stages, cook.probes());
        };
    List<Role> roles = new ArrayList<>(REQUEST.cook().roles());
    roles.add(0, Role.SEAR);
    PlannedCook both = PlannedCook.of(cooks, roles);
    SearSchedule own = both.sear(MIDDLE).orElseThrow();
    assertEquals(sear(240, 3, SearSchedule.Order.BOTH), own);
    Cook again = both.searedBy(own, MIDDLE).at(MIDDLE);
    Cook cook = both.at(MIDDLE);
    assertEquals(cook.stages().size(), again.stages().size());
    for (int i = 0; i < cook.stages().size(); i++) {
      assertEquals(cook.stages().get(i).upper(), again.stages().get(i).upper());
      assertEquals(cook.stages().get(i).end(), again.stages().get(i).end());
    }
    PlannedCook longer = both.searedBy(sear(480, 3, SearSchedule.Order.BOTH), MIDDLE);
    assertEquals(StageEnd.after(80), longer.at(MIDDLE).stages().get(0).end());
    assertEquals(both.roles(), longer.roles());
  }

  @Test
  void allOutcomes_haveTheWishedCore() {
    for (SearOutcome one : SearPlanner.withDefaults().trade(REQUEST, around(), 900).outcomes()) {
      assertTrue(one.early(), one.schedule().toString());
      assertEquals(REQUEST.wish().middle(), one.finalCore(), 0.05);
    }
  }

  private static List<SearSchedule> around() {
    return SearPlanner.around(REQUEST).stream().filter(one -> one.rounds() == 2).toList();
  }

  @Test
  void longerSear_isBrowner_andGreyer() {
    SearTrade trade =
        trade(
            sear(150, 2, SearSchedule.Order.LAST),
            sear(200, 2, SearSchedule.Order.LAST),
            sear(300, 2, SearSchedule.Order.LAST));
    for (int i = 1; i < 3; i++) {
      SearOutcome shorter = trade.outcomes().get(i - 1);
      SearOutcome longer = trade.outcomes().get(i);
      assertTrue(longer.crust().middle() > shorter.crust().middle());
      assertTrue(longer.grey() > shorter.grey());
    }
    assertEquals(trade.outcomes(), trade.curve());
  }

  /** After half an hour of waiting the core is hottest before the sear, at once it is not. */
  @Test
  void longerSear_isPulledEarlier_ifNothingWaits() {
    List<SearSchedule> schedules =
        List.of(sear(150, 2, SearSchedule.Order.LAST), sear(300, 2, SearSchedule.Order.LAST));
    SearPlanner planner = SearPlanner.withDefaults();
    List<SearOutcome> atOnce = planner.trade(REQUEST, schedules, 0).outcomes();
    assertTrue(atOnce.get(1).reading() < atOnce.get(0).reading() - 0.1);
    List<SearOutcome> later = planner.trade(REQUEST, schedules, 1800).outcomes();
    assertTrue(later.get(0).reading() > atOnce.get(0).reading() + 0.1);
  }

  @Test
  void leastGrey_isTheShortestThatIsBrownEnough() {
    SearTrade trade =
        trade(sear(150, 2, SearSchedule.Order.LAST), sear(300, 2, SearSchedule.Order.LAST));
    double between =
        0.5 * (trade.outcomes().get(0).crust().middle() + trade.outcomes().get(1).crust().middle());
    assertEquals(300, trade.leastGrey(between).orElseThrow().schedule().duration());
    assertEquals(150, trade.leastGrey(0).orElseThrow().schedule().duration());
    assertTrue(trade.leastGrey(51).isEmpty());
  }

  @Test
  void bothOrders_shareTheTime() {
    Cook both = REQUEST.cook().searedBy(sear(200, 2, SearSchedule.Order.BOTH), MIDDLE).at(MIDDLE);
    assertEquals(
        List.of(
            "sear, round 1, leg 1",
            "sear, round 1, leg 2",
            "gentle",
            "sear, round 1, leg 1",
            "sear, round 1, leg 2",
            "rest"),
        both.stages().stream().map(stage -> stage.name()).toList());
    double duration = both.stages().get(0).end().longest(0) + both.stages().get(1).end().longest(0);
    assertEquals(100, duration, 1e-9);
  }
}
