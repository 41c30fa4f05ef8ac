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


def chi_square():
    p, df = digits(rng.uniform(0.01, 0.99), 4), digits(rng.uniform(0.5, 60), 4)
    return [p, df, digits(stats.chi2.ppf(p, df))]


def cautious_df(variances, counts):
    """Welch and Satterthwaite's degrees of freedom, each variance at its upper 80% limit."""
    v = [var * (n - 1) / stats.chi2.ppf(0.2, n - 1) for var, n in zip(variances, counts)]
    return sum(v) ** 2 / sum(a * a / (n - 1) for a, n in zip(v, counts))


def unequal():
    """Different numbers of runs and different scatter, without batches."""
    x, y = (lives(int(rng.integers(2, 10)), rng.uniform(0.03, 0.6)) for _ in range(2))
    a, b = np.log(x), np.log(y)
    v = [np.var(a, ddof=1) / len(a), np.var(b, ddof=1) / len(b)]
    df = cautious_df(v, [len(a), len(b)])
    d, half = np.mean(a) - np.mean(b), stats.t.ppf(0.975, df) * np.sqrt(sum(v))
    return [x, y, *(digits(q) for q in (df, *np.exp([d, d - half, d + half])))]


def blocked():
    """Runs of a few edges in a few batches, by full matrices: least squares and an edge-robust variance without bias."""
    batches, counts = int(rng.integers(1, 5)), rng.integers(2, 6, 2)
    rows = []
    for k in (0, 1):
        for b in range(batches):
            for e in range(counts[k]):
                if e == 0 or rng.uniform() < 0.6:
                    rows.append((k, int(e), b))
    shift = 0.3 * rng.standard_normal(batches)
    sd = rng.uniform(0.05, 0.4, 2)
    log = [(k, e, b, digits(200 * np.exp(shift[b] + sd[k] * rng.standard_normal()), 5)) for k, e, b in rows]
    n, edges = len(log), sorted({(k, e) for k, e, _, _ in log})
    if min(sum(k == knife for k, _ in edges) for knife in (0, 1)) < 2 or n - batches - 1 < 1:
        return blocked()
    x = np.array([[float(b == c) for c in range(batches)] + [float(k == 0)] for k, _, b, _ in log])
    y = np.log([life for *_, life in log])
    pseudo = np.linalg.pinv(x)
    w, m = pseudo[-1], np.eye(n) - x @ pseudo
    knife = np.array([k for k, *_ in log])
    same = np.array([[(a[:2] == b[:2]) * 0.5 for b in log] for a in log]) + 0.5 * np.eye(n)
    omega = [np.where((knife[:, None] == k) & (knife[None, :] == k), same, 0) for k in (0, 1)]
    p = [np.zeros((n, n)) for _ in (0, 1)]
    for k, e in edges:
        part = np.where([q[:2] == (k, e) for q in log], w, 0)
        p[k] += np.outer(part, part)
    s = np.array([m @ y @ p[k] @ m @ y for k in (0, 1)])
    bias = np.array([[np.trace(p[k] @ m @ omega[j] @ m) for j in (0, 1)] for k in (0, 1)])
    q = np.array([w @ omega[j] @ w for j in (0, 1)])
    counts = [sum(k == j for k, _ in edges) for j in (0, 1)]
    if np.linalg.det(bias) > 0.05 * bias[0, 0] * bias[1, 1]:
        pooled = s.sum() / bias.sum()
        var = np.maximum(np.linalg.solve(bias, s), 0.02 * pooled if batches > 1 else 0)
        share = np.linalg.solve(bias.T, q)
        assumed = [v * (c - 1) / stats.chi2.ppf(0.2, c - 1) for v, c in zip(var, counts)]
    else:
        var = assumed = np.full(2, s.sum() / bias.sum())
        share = np.full(2, q.sum() / bias.sum())
    a = m @ (share[0] * p[0] + share[1] * p[1]) @ m
    o = assumed[0] * omega[0] + assumed[1] * omega[1]
    df = min(max(np.trace(a @ o) ** 2 / np.trace(a @ o @ a @ o), 1), len(edges) - 2)
    d, half = w @ y, stats.t.ppf(0.975, df) * np.sqrt(q @ var)
    return [[list(r) for r in log], *(digits(v) for v in (df, *np.exp([d, d - half, d + half])))]


def likelihood_fit(x, y, early):
    """Top of the normal likelihood of logarithms and the variance of the last coefficient, by numerical curvature."""

    def minus(p):
        z = (y - x @ p[:-1]) / np.exp(p[-1])
        return -np.sum(np.where(early, stats.norm.logsf(z), stats.norm.logpdf(z) - p[-1]))

    beta = np.linalg.lstsq(x, y, rcond=None)[0]
    at = np.append(beta, np.log(np.std(y - x @ beta) + 0.02))
    for _ in range(6):
        at = optimize.minimize(minus, at, method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-14, "maxiter": 40000, "maxfev": 40000, "adaptive": True}).x
    h, size = 1e-4 * np.exp(at[-1]), len(at)
    e = np.eye(size) * h
    # Differences of the fourth order: from single and double steps.
    second = lambda i, j, c: (minus(at + c * (e[i] + e[j])) - minus(at + c * (e[i] - e[j])) - minus(at - c * (e[i] - e[j])) + minus(at - c * (e[i] + e[j]))) / (2 * c * h) ** 2
    curvature = np.array([[(4 * second(i, j, 20) - second(i, j, 40)) / 3 for j in range(size)] for i in range(size)])
    ended, columns = np.sum(~early), x.shape[1]
    return at[columns - 1], np.linalg.inv(curvature)[columns - 1, columns - 1] * ended / (ended - columns)


def judged_censored():
    """Two knives of which some runs were given up: one by one without batches, or together within two batches."""
    batches, n = int(rng.choice([0, 2])), 6
    knife = np.repeat([0, 1], n)
    batch = np.tile(np.arange(n) % max(batches, 1), 2)
    sd = 0.2
    life = 200 * np.exp(np.where(batch == 1, 0.3, 0) + np.where(knife == 0, 0.2, 0) + sd * rng.standard_normal(2 * n))
    early = rng.uniform(size=2 * n) < 0.25
    life = np.array([digits(v, 5) for v in np.where(early, life * rng.uniform(0.6, 1, 2 * n), life)])
    ended = [np.sum(~early[knife == k]) for k in (0, 1)]
    if min(ended) < 4 or not early.any():
        return judged_censored()
    y = np.log(life)
    if batches == 0:
        fits = []
        for k in (0, 1):
            own = knife == k
            # Without an early end this is mean and variance.
            fits.append(likelihood_fit(np.ones((n, 1)), y[own], early[own]) if early[own].any() else (np.mean(y[own]), np.var(y[own], ddof=1) / n))
        d, v = fits[0][0] - fits[1][0], fits[0][1] + fits[1][1]
        df = cautious_df([f[1] for f in fits], ended)
    else:
        x = np.column_stack([batch == 0, batch == 1, knife == 0]).astype(float)
        d, v = likelihood_fit(x, y, early)
        df = sum(ended) - 3
    half = stats.t.ppf(0.975, df) * np.sqrt(v)
    log = [[int(k), int(b) if batches else None, float(t), bool(e)] for k, b, t, e in zip(knife, batch, life, early)]
    return [log, *(digits(q, 8) for q in (df, *np.exp([d, d - half, d + half])))]


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
        "chiSquare": [chi_square() for _ in range(100)],
        "unequal": [unequal() for _ in range(300)],
        "blocked": [blocked() for _ in range(200)],
        "judgedCensored": [judged_censored() for _ in range(40)],
    },
    sys.stdout,
    separators=(",", ":"),
)
