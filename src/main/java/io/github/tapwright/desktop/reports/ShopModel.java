package io.github.tapwright.desktop.reports;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.report.EditShop;
import io.github.tapwright.report.EditShop.Change;
import io.github.tapwright.sitting.ShopPicture;
import io.github.tapwright.sitting.ShopProfile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What the workshop says of itself on its reports. */
public final class ShopModel {

    private final EditShop editShop;
    private final Work work;
    private final Notices notices;
    private final StringProperty name = new SimpleStringProperty("");
    private final StringProperty address = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper picture = new ReadOnlyStringWrapper("no picture");
    private String shownName = "";
    private String shownAddress = "";

    /**
     * Nothing said yet.
     *
     * @param editShop shows and changes it
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public ShopModel(EditShop editShop, Work work, Notices notices) {
        this.editShop = editShop;
        this.work = work;
        this.notices = notices;
    }

    /**
     * The shop's name as typed.
     *
     * @return changeable
     */
    public StringProperty name() {
        return name;
    }

    /**
     * Its address as typed, a line each.
     *
     * @return changeable
     */
    public StringProperty address() {
        return address;
    }

    /**
     * Its picture.
     *
     * @return name of the file, or that there is none
     */
    public ReadOnlyStringProperty picture() {
        return picture.getReadOnlyProperty();
    }

    /** Reads what holds; what was typed and not kept yet stays. */
    public void refresh() {
        work.start(new Job<>("Reading the shop's name", progress -> editShop.show()), profile -> {
            if (shownName.equals(name.get()) && shownAddress.equals(address.get())) {
                show(profile);
            }
        });
    }

    private void show(ShopProfile profile) {
        name.set(profile.name().orElse(""));
        address.set(String.join("\n", profile.address()));
        shownName = name.get();
        shownAddress = address.get();
        picture.set(words(profile));
    }

    /** Keeps name and address as typed; it can be taken back. */
    public void keep() {
        Change typed = words(name.get(), address.get().lines().toList());
        work.start(new Job<>("Keeping the shop's name", progress -> edit(typed)), edited -> {
            show(edited.after());
            ShopProfile before = edited.before();
            notices.say(
                    "Kept; reports made from now on bear it",
                    () -> change(words(before.name().orElse(""), before.address()), notices::dismiss));
        });
    }

    /**
     * Takes another picture.
     *
     * @param file PNG, JPEG or SVG
     */
    public void usePicture(Path file) {
        change(
                new Change(Optional.empty(), Optional.empty(), Optional.of(file), false),
                () -> notices.say("Kept the picture; the file itself stays where it is"));
    }

    /** Goes without a picture. */
    public void withoutPicture() {
        change(
                new Change(Optional.empty(), Optional.empty(), Optional.empty(), true),
                () -> notices.say("Reports made from now on bear no picture"));
    }

    private void change(Change change, Runnable done) {
        work.start(new Job<>("Keeping the shop's name", progress -> edit(change)), edited -> {
            picture.set(words(edited.after()));
            change.name().ifPresent(n -> show(edited.after()));
            done.run();
        });
    }

    private Edited edit(Change change) throws IOException {
        return new Edited(editShop.show(), editShop.edit(change));
    }

    /** What held, and what holds now. */
    private record Edited(ShopProfile before, ShopProfile after) {}

    private static Change words(String name, List<String> address) {
        return new Change(Optional.of(name), Optional.of(address), Optional.empty(), false);
    }

    private static String words(ShopProfile profile) {
        return profile.picture().map(ShopPicture::fileName).orElse("no picture");
    }
}
