package io.github.tapwright.desktop.sitting;

import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.RecordLive;

/**
 * What a sitting is made with.
 *
 * @param listInstruments whom one can choose
 * @param listSittings finds the last one, whose conditions are remembered
 * @param showSitting reads it
 * @param addSitting keeps recordings made elsewhere
 * @param recordLive opens the microphone
 * @param keepCapture keeps what it recorded
 * @param studyBench keeps a repeatability study
 */
public record SittingUseCases(
        ListInstruments listInstruments,
        ListSittings listSittings,
        ShowSitting showSitting,
        AddSitting addSitting,
        RecordLive recordLive,
        KeepCapture keepCapture,
        StudyBench studyBench) {}
