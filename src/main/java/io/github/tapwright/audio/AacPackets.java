package io.github.tapwright.audio;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalLong;

/** Where the packets of AAC sound lie in a file, and what its decoder must know first. */
interface AacPackets {

    /** For the maker: the kind of file. */
    String container();

    /** The decoder's configuration, an AudioSpecificConfig of ISO/IEC 14496-3 section 1.6.2.1. */
    byte[] configuration();

    /** The next packet, if there is another. */
    Optional<byte[]> next() throws IOException;

    /** How many samples the file promises. */
    OptionalLong promisedSamples();
}
