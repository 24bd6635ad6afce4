/** A microphone made of software, so that recording is tested with the operating system's real sound path. */
package io.github.tapwright.microphone;
