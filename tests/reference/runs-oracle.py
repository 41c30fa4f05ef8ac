"""Makes runs-oracle.json: results of SciPy for random data sets, which runs-oracle.test.ts holds this project's against.

    python3 tests/reference/runs-oracle.py > tests/reference/runs-oracle.json

Data are rounded before they are used, so that both sides compute with the same numbers.
"""

import json
import sys

import numpy as np
import scipy
from scipy import integrate, optimize, stats

rng = np.random.default_rng(20)


def digits(value, n=10):
    return float(f"{value:.{n}g}")


def lives(n, sd):
    return [digits(v, 4) for v in rng.uniform(20, 900) * np.exp(sd * rng.standard_normal(n))]


def welch():
    x, y = (lives(int(rng.integers(2, 9)), rng.uniform(0.03, 0.6)) for _ in range(2))
    result = stats.ttest_ind(np.log(x), np.log(y), equal_var=False)
    interval = result.confidence_interval(0.95)
    return [x, y, *(digits(v) for v in (result.statistic, result.df, result.pvalue, *np.exp([interval.low, interval.high])))]


def paired():
    n = int(rng.integers(2, 9))
    shift = np.exp(0.4 * rng.standard_normal(n))
    x, y = ([digits(v, 4) for v in np.array(lives(n, 0.15)) * shift] for _ in range(2))
    result = stats.ttest_rel(np.log(x), np.log(y))
    interval = result.confidence_interval(0.95)
    return [x, y, *(digits(v) for v in (result.pvalue, *np.exp([interval.low, interval.high])))]


def censored():
    n = int(rng.integers(4, 13))
    values = np.sort(lives(n, rng.uniform(0.1, 0.5)))
    limit = digits(float(values[-1]) * rng.uniform(0.75, 1.05), 4)
    ended = [float(v) for v in values if v < limit]
    if len(ended) < 3:
        return censored()
    early = n - len(ended)

    def minus_log_likelihood(p):
        z = (np.log(ended) - p[0]) / np.exp(p[1])
        return -(np.sum(stats.norm.logpdf(z) - p[1]) + early * stats.norm.logsf((np.log(limit) - p[0]) / np.exp(p[1])))

    start = [np.mean(np.log(ended)), np.log(np.std(np.log(ended)) + 0.02)]
    best = optimize.minimize(minus_log_likelihood, start, method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 20000, "maxfev": 20000})
    return [ended, limit, early, digits(np.exp(best.x[0]), 8), digits(np.exp(best.x[1]), 8)]


def looked_at():
    """Lives known to lie between two looks, by SciPy's own fit to censored data."""
    n = int(rng.integers(5, 13))
    values = rng.uniform(150, 400) * np.exp(rng.uniform(0.2, 0.5) * rng.standard_normal(n))
    low = np.floor(values / 25) * 25
    pairs = sorted(zip(low.tolist(), (low + 25).tolist()))
    if len(set(pairs)) < 4 or pairs[0][0] == 0:
        return looked_at()

    def minus_log_likelihood(p):
        sd = np.exp(p[1])
        a, b = np.log([q[0] for q in pairs]), np.log([q[1] for q in pairs])
        return -np.sum(np.log(stats.norm.cdf((b - p[0]) / sd) - stats.norm.cdf((a - p[0]) / sd)))

    best = optimize.minimize(minus_log_likelihood, [np.mean(np.log(values)), np.log(np.std(np.log(values)))], method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 20000, "maxfev": 20000})
    return [pairs, digits(np.exp(best.x[0]), 8), digits(np.exp(best.x[1]), 8)]


def fisher():
    f, a, b = digits(rng.gamma(2), 4), int(rng.integers(1, 9)), int(rng.integers(1, 40))
    return [f, a, b, digits(stats.f.sf(f, a, b))]


def noncentral():
    t, df, delta = digits(rng.uniform(-4, 8), 4), int(rng.integers(1, 60)), digits(rng.uniform(-3, 6), 4)
    return [t, df, delta, digits(stats.nct.cdf(t, df, delta))]


def alike():
    """Exact power of two one-sided tests, by integrating over the chi distribution of the scatter."""
    below, above, df = digits(rng.uniform(0.5, 6), 4), digits(rng.uniform(0.5, 6), 4), int(rng.integers(2, 60))
    limit = stats.t.ppf(0.95, df)
    root = np.sqrt(df)
    end = (below + above) / (2 * limit) * root

    def part(chi):
        s = chi / root
        return (stats.norm.cdf(above - limit * s) - stats.norm.cdf(limit * s - below)) * stats.chi.pdf(chi, df)

    value, _ = integrate.quad(part, 0, end, epsabs=1e-12, epsrel=1e-12, limit=400, points=[min(end * 0.99, root)])
    return [below, above, df, digits(value)]


json.dump(
    {
        "made": f"SciPy {scipy.__version__}, NumPy {np.__version__}",
        "welch": [welch() for _ in range(1000)],
        "paired": [paired() for _ in range(200)],
        "censored": [censored() for _ in range(100)],
        "lookedAt": [looked_at() for _ in range(60)],
        "fisher": [fisher() for _ in range(100)],
        "noncentral": [noncentral() for _ in range(100)],
        "alike": [alike() for _ in range(60)],
    },
    sys.stdout,
    separators=(",", ":"),
)
