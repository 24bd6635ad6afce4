/** Strange input: what every reading of it must keep to, and the seeds it starts from. */
package io.github.tapwright.fuzz;
