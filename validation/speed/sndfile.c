/* Seconds to decode each file whole, by libsndfile, the middle of five times: "decode FORMAT <tab> seconds". */
#include <sndfile.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "timing.h"

int main(int argc, char **argv) {
    static double block[2 * 8192];
    for (int k = 1; k < argc; k++) {
        double seconds[5];
        for (int round = 0; round < 5; round++) {
            double began = now();
            SF_INFO info = {0};
            SNDFILE *file = sf_open(argv[k], SFM_READ, &info);
            if (!file || info.channels > 2) {
                fprintf(stderr, "%s: %s\n", argv[k], sf_strerror(file));
                return 1;
            }
            while (sf_readf_double(file, block, 8192) > 0) {}
            sf_close(file);
            seconds[round] = now() - began;
        }
        qsort(seconds, 5, sizeof *seconds, ascending);
        printf("decode %s\t%.6f\n", strrchr(argv[k], '.') + 1, seconds[2]);
    }
    return 0;
}
