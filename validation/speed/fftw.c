/* Seconds of one real transform of each length given, by FFTW with a measured plan: "fft N <tab> seconds". */
#include <fftw3.h>
#include <stdio.h>
#include <stdlib.h>

#include "timing.h"

int main(int argc, char **argv) {
    for (int k = 1; k < argc; k++) {
        int n = atoi(argv[k]);
        double *in = fftw_alloc_real(n);
        fftw_complex *out = fftw_alloc_complex(n / 2 + 1);
        fftw_plan plan = fftw_plan_dft_r2c_1d(n, in, out, FFTW_MEASURE);
        for (int i = 0; i < n; i++) in[i] = (double)rand() / RAND_MAX - 0.5;
        int repeats = 1 + 4000000 / n;
        double seconds[9];
        for (int round = 0; round < 9; round++) {
            double began = now();
            for (int i = 0; i < repeats; i++) fftw_execute(plan);
            seconds[round] = (now() - began) / repeats;
        }
        qsort(seconds, 9, sizeof *seconds, ascending);
        printf("fft %d\t%.9f\n", n, seconds[4]);
    }
    return 0;
}
