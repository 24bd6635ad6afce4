"""Figures of small samples by other roads than Tapwright's: python3 derive.py > derived.csv

Power by scipy's noncentral t, effect sizes by its root, trends by going through every order of the values.
"""
from itertools import permutations

import numpy as np
from scipy.optimize import brentq
from scipy.stats import nct, t, ttest_ind

SOURCE = '"derived, derive.py"'
print("quantity,case,value,source")


def show(quantity, case, value):
    print(f"{quantity},{case},{value:.10g},{SOURCE}")


def power(n, d):
    df = 2 * (n - 1)
    ncp = d * np.sqrt(n / 2)
    critical = t.ppf(0.975, df)
    return nct.sf(critical, df, ncp) + nct.cdf(-critical, df, ncp)


for d in (0.2, 0.5, 0.8, 1.0, 1.5, 2.0, 3.0):
    show("per_group", d, next(n for n in range(2, 2000) if power(n, d) >= 0.8))

for df, ncp, x in ((4, 1, 2), (8, 2.5, 3), (3, -1, 0.5), (20, 4, 2.1), (8, 0, 1.86), (98, 3, 3.5), (2, 6, 9)):
    show("noncentral_t", f"{df} {ncp} {x}", nct.cdf(x, df, ncp))

first = [30.02, 29.99, 30.11, 29.97, 30.01, 29.99]
second = [29.89, 29.93, 29.72, 29.98, 30.02, 29.98]
statistic = ttest_ind(second, first).statistic
scale = np.sqrt(1 / 6 + 1 / 6)
show("effect_lower", "gauge", scale * brentq(lambda m: nct.sf(statistic, 10, m) - 0.025, -9, 9))
show("effect_upper", "gauge", scale * brentq(lambda m: nct.cdf(statistic, 10, m) - 0.025, -9, 9))


def score(values):
    return sum(np.sign(values[j] - values[i]) for i in range(len(values)) for j in range(i + 1, len(values)))


for case in ("1 2 3 4 5", "1 2 2 3 4 4", "2 1 3 3 5 4 7", "5 5 5 1 2", "1 1 2 2 3 3 3 4"):
    values = [float(v) for v in case.split()]
    scores = np.array([score(p) for p in permutations(values)])
    show("trend_two_sided", case, np.mean(abs(scores) >= abs(score(values))))
    show("trend_variance", case, np.mean(scores**2))
