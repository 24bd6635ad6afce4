package io.github.tapwright.chart;

/** What a picture shows, before it is laid out: on the screen, in a file or on a page. */
public sealed interface Picture
        permits FingerboardPicture,
                GroupPicture,
                LevelPicture,
                NotePicture,
                PointsPicture,
                ResponsePicture,
                TrendPicture {}
