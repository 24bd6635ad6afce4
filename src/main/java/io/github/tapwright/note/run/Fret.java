package io.github.tapwright.note.run;

/**
 * A place on the fingerboard.
 *
 * @param string number of the string, 1 the highest, as players count
 * @param fret 0 for the open string
 */
public record Fret(int string, int fret) implements Comparable<Fret> {

    /** Refuses places no fingerboard has. */
    public Fret {
        if (string < 1 || fret < 0) {
            throw new IllegalArgumentException(
                    "strings count from 1 and frets from 0, were " + string + " and " + fret);
        }
    }

    @Override
    public int compareTo(Fret other) {
        return string == other.string ? Integer.compare(fret, other.fret) : Integer.compare(other.string, string);
    }
}
