/**
 * The command line: {@code simulate}, {@code replay} and {@code make-log}. Exit codes: 0 done, 1
 * the computation failed, 2 bad usage or input.
 */
@NullMarked
package org.roastfield.lab.command;

import org.jspecify.annotations.NullMarked;
