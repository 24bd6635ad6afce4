package io.github.tapwright.cli;

import io.github.tapwright.sitting.ShopProfile;

/** What a workshop says of itself, for people. */
final class ShopText {

    private final Terminal terminal;

    ShopText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(ShopProfile shop) {
        terminal.say("Workshop: %s", shop.name().orElse("no name given"));
        shop.address().forEach(line -> terminal.say("  %s", line));
        terminal.say(
                "  picture: %s",
                shop.picture()
                        .map(p -> p.fileName() + ", SHA-256 "
                                + p.original().sha256().substring(0, 12) + "…")
                        .orElse("none"));
    }
}
