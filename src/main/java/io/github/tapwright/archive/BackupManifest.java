package io.github.tapwright.archive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of what a backup holds, itself the backup's first entry.
 *
 * <p>Plain text: a line with the format's name, one line "sha256 size path" for each file, and a line with the
 * number of files, so that a list cut short shows. Only the paths an archive has are allowed, which leaves no
 * room for a path that leads elsewhere.
 *
 * @param files what the backup holds, in order
 */
record BackupManifest(List<Item> files) {

    static final String ENTRY = "manifest.txt";

    private static final String HEADER = "tapwright backup 1";
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([0-9]{1,18}) (\\S+)");
    private static final Pattern ORIGINAL =
            Pattern.compile("originals/([0-9a-f]{2})/(\\1[0-9a-f]{62})\\.[0-9a-z]{1,8}");

    BackupManifest {
        files = List.copyOf(files);
    }

    /** One file of a backup; the path is below the archive's folder, with slashes. */
    record Item(Sha256 content, String path) {}

    String text() {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (Item item : files) {
            text.append(item.content().hex())
                    .append(' ')
                    .append(item.content().sizeBytes())
                    .append(' ')
                    .append(item.path())
                    .append('\n');
        }
        return text.append("files ").append(files.size()).append('\n').toString();
    }

    static BackupManifest parse(String text) {
        List<String> lines = text.lines().toList();
        int last = lines.size() - 1;
        if (lines.size() < 2 || !lines.get(0).equals(HEADER) || !lines.get(last).equals("files " + (last - 1))) {
            throw refused("its list of files is not complete, or was written by a newer program");
        }
        List<Item> items = new ArrayList<>();
        Set<String> paths = new HashSet<>();
        for (String line : lines.subList(1, last)) {
            Item item = item(line);
            if (!paths.add(item.path())) {
                throw refused("it lists " + item.path() + " twice");
            }
            items.add(item);
        }
        if (!paths.contains(ArchiveFolder.DATABASE)) {
            throw refused("it holds no database");
        }
        return new BackupManifest(items);
    }

    private static Item item(String line) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
            throw refused("its list of files has a line that cannot be read: " + line);
        }
        Sha256 content = new Sha256(matcher.group(1), Long.parseLong(matcher.group(2)));
        String path = matcher.group(3);
        Matcher original = ORIGINAL.matcher(path);
        boolean allowed =
                original.matches() ? original.group(2).equals(content.hex()) : path.equals(ArchiveFolder.DATABASE);
        if (!allowed) {
            throw refused("it lists " + path + ", which is no file of an archive");
        }
        return new Item(content, path);
    }

    static ArchiveException refused(String reason) {
        return new ArchiveException("this backup was not made by this program, or is damaged: " + reason
                + "; nothing was restored, use another backup");
    }
}
