package io.github.tapwright.report;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.SvgReader;
import io.github.tapwright.report.xhtml.Text;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A workshop's picture after its check: PNG, JPEG or SVG by what is in the file, of bearable size, and nothing in it that runs or fetches.
 *
 * @param mediaType such as "image/png"
 * @param base64 the bytes of the file
 */
record Emblem(String mediaType, String base64) {

    /** Longest file, bytes. */
    static final long LONGEST = 2_000_000;

    /** Most pixels on a side. */
    static final int MOST_PIXELS = 4000;

    /** What can run or fetch; a drawing needs none of it. */
    private static final Set<String> FORBIDDEN =
            Set.of("script", "foreignobject", "image", "iframe", "embed", "object", "audio", "video", "a", "set");

    /**
     * Checks a file.
     *
     * @param file the picture
     * @param name what the maker calls it
     * @return the picture
     * @throws RefusedEntryException if it cannot stand on a report
     * @throws UnreadableRecordingException if it cannot be read
     */
    static Emblem of(Path file, String name) {
        byte[] bytes = bytes(file, name);
        String type = type(bytes)
                .orElseThrow(() -> new RefusedEntryException(name
                        + " is neither PNG nor JPEG nor SVG inside, whatever its name says; save it as one of them"));
        if (type.endsWith("svg+xml")) {
            checkDrawing(bytes, name);
        } else {
            checkPixels(bytes, name);
        }
        return new Emblem(type, Base64.getEncoder().encodeToString(bytes));
    }

    private static byte[] bytes(Path file, String name) {
        try {
            if (Files.size(file) > LONGEST) {
                throw new RefusedEntryException(
                        name + " is longer than 2 MB; save the picture smaller, 1000 pixels across are plenty");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UnreadableRecordingException(
                    "the picture " + name + " cannot be read from " + file + "; check its permissions and the disk", e);
        }
    }

    String dataAddress() {
        return "data:" + mediaType + ";base64," + base64;
    }

    private static Optional<String> type(byte[] bytes) {
        if (startsWith(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return Optional.of("image/png");
        }
        if (startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
            return Optional.of("image/jpeg");
        }
        String start = new String(bytes, 0, Math.min(bytes.length, 4000), StandardCharsets.UTF_8);
        return start.contains("<svg") ? Optional.of("image/svg+xml") : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    /** The size is read from the head first, so that a small file cannot unpack into a huge picture. */
    private static void checkPixels(byte[] bytes, String name) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw damaged(name);
            }
            ImageReader reader = readers.next();
            reader.setInput(in);
            if (reader.getWidth(0) > MOST_PIXELS || reader.getHeight(0) > MOST_PIXELS) {
                throw new RefusedEntryException(name + " has more than " + MOST_PIXELS
                        + " pixels on a side; save the picture smaller, 1000 pixels across are plenty");
            }
            reader.read(0);
            reader.dispose();
        } catch (IOException | IndexOutOfBoundsException | IllegalArgumentException e) {
            throw damaged(name);
        }
    }

    private static RefusedEntryException damaged(String name) {
        return new RefusedEntryException(name + " is damaged or of a kind no reader here knows; save it anew as PNG");
    }

    private static void checkDrawing(byte[] bytes, String name) {
        try {
            Element root = SvgReader.read(new String(bytes, StandardCharsets.UTF_8));
            if (!root.name().equals("svg")) {
                throw new RefusedEntryException(name + " is no SVG drawing; save it as plain SVG or PNG");
            }
            refuseWhatRuns(root, name);
        } catch (SvgReader.NoSvgException e) {
            throw new RefusedEntryException(name + " is no SVG a report can take in (" + e.getMessage()
                    + "); save it as plain SVG without a document type, or as PNG");
        }
    }

    private static void refuseWhatRuns(Element element, String name) {
        String plain = element.name().substring(element.name().indexOf(':') + 1).toLowerCase(Locale.ROOT);
        boolean bad = FORBIDDEN.contains(plain)
                || plain.startsWith("animate")
                || element.attributes().entrySet().stream().anyMatch(a -> reachesOut(a.getKey(), a.getValue()));
        boolean style = plain.equals("style")
                && element.children().stream().anyMatch(c -> c instanceof Text t && fetches(t.text()));
        if (bad || style) {
            throw new RefusedEntryException(name + " holds something that runs or fetches (" + element.name()
                    + "); save it as plain SVG with nothing but shapes, or as PNG");
        }
        for (Node child : element.children()) {
            if (child instanceof Element e) {
                refuseWhatRuns(e, name);
            }
        }
    }

    private static boolean reachesOut(String attribute, String value) {
        String plain = attribute.toLowerCase(Locale.ROOT);
        boolean link = plain.equals("href") || plain.endsWith(":href") || plain.equals("src");
        return plain.startsWith("on") || (link && !value.strip().startsWith("#")) || fetches(value);
    }

    /** Any address but one within the drawing. */
    private static boolean fetches(String style) {
        String plain = style.toLowerCase(Locale.ROOT).replaceAll("[\\s\"']", "");
        return plain.contains("@import") || plain.replace("url(#", "").contains("url(");
    }
}
