@NullMarked
package org.roastfield.core.plan;

import org.jspecify.annotations.NullMarked;
