package org.roastfield.lab.plan;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.roastfield.core.cook.Probe;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * What is asked of a plan beside its cook file.
 *
 * @param service when it is to be on the table, instead of what the file says
 * @param zone of all clock times, instead of the file's
 * @param now time after a plan's zero [s] before which nothing can begin any more; empty if that is
 *     not to be looked at
 * @param display the probe that decides when it comes off
 * @param members draws
 * @param seed of the draws
 * @param alone whether no other cut is on the same fire, which may then be changed for this one
 * @param exact whether what changes do is found by all draws, instead of by derivatives or a few
 * @param scale of temperatures in words
 */
public record PlanAsk(
    Optional<LocalDateTime> service,
    Optional<ZoneId> zone,
    Function<PlanClock, OptionalDouble> now,
    Probe display,
    int members,
    long seed,
    boolean alone,
    boolean exact,
    TemperatureScale scale) {}
