"""Log evidences of the twelve stories by another route than the product's: Gauss-Legendre boxes in numpy.

Own second implementation, not an outside check. Run: python3 second-implementation.py > evidence.json
Needs numpy and scipy (log_ndtr). Trials are made up here from a fixed rule; they are not measurements.
"""
import json
import sys

import numpy as np
from scipy.optimize import minimize
from scipy.special import log_ndtr

C_SD, LNQ_MEAN, LNQ_SD, G_SD, A_SD = 2.5, np.log(8), 0.5, 1.0, 2.0
STORIES = ["constant", "rises", "falls", "rope", "rises+rope", "falls+rope"]


def made_up(n, seed):
    rng = np.random.default_rng(seed)
    load = np.round(np.exp(rng.uniform(np.log(38), np.log(82), n)), 1)
    rope = np.round(rng.uniform(-0.2, 0.2, n), 3)
    order = (np.arange(n) + 1 - (n + 1) / 2) / 10
    eta = 0.4 + 1.6 * np.log(load / 60) - 6 * rope + 0.1 * order
    stuck = eta + rng.standard_normal(n) > 0
    return dict(load=load.tolist(), ropeTerm=rope.tolist(), order=np.round(order, 2).tolist(),
                stuck=stuck.astype(int).tolist())


def bell(x, mean, sd):
    return -0.5 * ((x - mean) / sd) ** 2 - 0.5 * np.log(2 * np.pi) - np.log(sd)


def log_evidence(trials, story, with_order, nodes):
    x = np.log(np.array(trials["load"]) / 60)
    r, o = np.array(trials["ropeTerm"]), np.array(trials["order"])
    s = np.where(np.array(trials["stuck"]) == 1, 1.0, -1.0)
    sign = 1 if story.startswith("rises") else -1 if story.startswith("falls") else 0
    names = ["a"] + (["c"] if sign else []) + (["v"] if "rope" in story else []) + (["g"] if with_order else [])

    def log_prior(p):
        total = bell(p["a"], 0, A_SD)
        if "c" in p: total = total + np.log(2) + bell(p["c"], 0, C_SD)
        if "v" in p: total = total + bell(p["v"], LNQ_MEAN, LNQ_SD)
        if "g" in p: total = total + bell(p["g"], 0, G_SD)
        return total

    def log_density(p):
        total = log_prior(p)
        for i in range(len(x)):
            eta = p["a"]
            if "c" in p: eta = eta + sign * p["c"] * x[i]
            if "v" in p: eta = eta - np.exp(p["v"]) * r[i]
            if "g" in p: eta = eta + p["g"] * o[i]
            total = total + log_ndtr(s[i] * eta)
        return total

    start = {"a": 0.3, "c": 1.0, "v": LNQ_MEAN, "g": 0.0}
    f = lambda z: -log_density({n: max(v, 0.0) if n == "c" else v for n, v in zip(names, z)})
    bounds = [(0, None) if n == "c" else (None, None) for n in names]
    best = minimize(f, [start[n] for n in names], bounds=bounds, method="L-BFGS-B").x
    sd, prior = {}, {"a": A_SD, "c": C_SD, "v": LNQ_SD, "g": G_SD}
    hess = np.zeros((len(names),) * 2)
    h = 1e-3
    for i in range(len(names)):
        for j in range(len(names)):
            e = lambda u, w: f(best + h * (u * np.eye(len(names))[i] + w * np.eye(len(names))[j]))
            hess[i, j] = (e(1, 1) - e(1, -1) - e(-1, 1) + e(-1, -1)) / (4 * h * h)
    for i, n in enumerate(names):
        if n == "c" and best[i] < 0.05: hess[i, :] = hess[:, i] = 0; hess[i, i] = 1 / C_SD**2
    cov = np.linalg.inv(hess)
    grids, weights = {}, {}
    mean = {"a": 0, "c": 0, "v": LNQ_MEAN, "g": 0}
    for i, n in enumerate(names):
        s_i = min(np.sqrt(abs(cov[i, i])), prior[n])
        low = max(best[i] - 9 * s_i, mean[n] - 8 * prior[n])
        high = min(best[i] + 9 * s_i, mean[n] + 8 * prior[n])
        if n == "c": low = max(low, 0)
        u, w = np.polynomial.legendre.leggauss(nodes)
        grids[n], weights[n] = low + (high - low) * (u + 1) / 2, w * (high - low) / 2
    k = len(names)
    total, most = 0.0, -best_value(log_density, names, best)
    # The margin's nodes one at a time keep the arrays small.
    rest = names[1:]
    mesh = np.meshgrid(*[grids[n] for n in rest], indexing="ij") if rest else []
    wmesh = np.ones(())
    for n in rest: wmesh = np.multiply.outer(wmesh, weights[n])
    for a, wa in zip(grids["a"], weights["a"]):
        p = {"a": a, **dict(zip(rest, mesh))}
        total += wa * np.sum(wmesh * np.exp(log_density(p) + most))
    return float(np.log(total) - most)


def best_value(log_density, names, best):
    return float(log_density(dict(zip(names, best))))


if __name__ == "__main__":
    reference = json.load(open(sys.argv[1])) if len(sys.argv) > 1 else None
    out = {}
    sets = {"18": made_up(18, 18), "200": made_up(200, 200)}
    if reference:
        h = reference["hang_synthetic_trials"]
        keep = [k for k, v in enumerate(h["outcome"]) if v != "stopped"]
        sets["24"] = dict(load=[h["load_kg"][k] for k in keep], ropeTerm=[h["rope_covariate"][k] for k in keep],
                          order=[h["order_centred_per10"][k] for k in keep],
                          stuck=[int(h["outcome"][k] != "slipped") for k in keep])
        r = reference["reference_60"]
        sets["60"] = dict(load=r["load"], ropeTerm=r["ropeTerm"], order=r["order"], stuck=r["y"])
    for name, trials in sets.items():
        evidence = {}
        for with_order in (False, True):
            for story in STORIES:
                size = 1 + ("+" in story) + (story != "constant") + with_order
                n = {1: 200, 2: 120, 3: 90, 4: 84 if len(trials["load"]) < 30 else 46}[size]
                evidence[story + (" with order" if with_order else "")] = log_evidence(trials, story, with_order, n)
                print(name, story, with_order, evidence[story + (" with order" if with_order else "")], file=sys.stderr, flush=True)
        out[name] = {"trials": trials, "logEvidence": evidence}
    json.dump(out, sys.stdout, indent="\t")
