/**
 * How good forecasts were: scores of what was said before against what then came.
 *
 * <p>A forecast is a {@link org.roastfield.lab.score.Predictive} distribution of one number, such
 * as the time that is left until a core gets to its target. With what came it is a {@link
 * org.roastfield.lab.score.ForecastCase}, whose scores are a {@link
 * org.roastfield.lab.score.CaseScore}; those of many cooks are a {@link
 * org.roastfield.lab.score.ScoreSummary}. One forecast a cook: forecasts of one cook at several
 * times go into summaries of their own, since they share their errors.
 *
 * <p>Coverage, width and CRPS belong together: coverage alone is had by intervals that are too
 * wide, and a mean of scores by a few easy cooks. Every score is least for the forecaster who says
 * what they believe [GneitingRaftery2007]; less is better but for the skill.
 */
@NullMarked
package org.roastfield.lab.score;

import org.jspecify.annotations.NullMarked;
