/**
 * What is cooked and how: the cut, its probes, and the stages it goes through with their end rules.
 */
@NullMarked
package org.roastfield.core.cook;

import org.jspecify.annotations.NullMarked;
