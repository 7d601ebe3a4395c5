"""Writes reference.json: fits of invented friction pairs by numpy and scipy (a general library).

Run with: python3 generate.py   (numpy 2.4.6 and scipy 1.17.1 made the stored file)
"""

import json

import numpy as np
from scipy import stats
from scipy.optimize import curve_fit

rng = np.random.default_rng(11)
loads = np.array([5.0, 8, 12, 20, 35, 60, 90, 120])
laws = {
    "proportional": 0.62 * loads,
    "adhesion": 4.0 + 0.45 * loads,
    "power": 1.3 * loads**0.82,
    "rising power": 0.3 * loads**1.12,
}
sets = []
for name, exact in laws.items():
    friction = np.round(exact + rng.normal(0, 0.4, loads.size), 3)
    slope0 = np.linalg.lstsq(loads[:, None], friction, rcond=None)[0][0]
    rss0 = float(np.sum((friction - slope0 * loads) ** 2))
    line = stats.linregress(loads, friction)
    power, cov = curve_fit(
        lambda x, k, n: k * x**n, loads, friction, p0=[0.5, 1.0], xtol=1e-15, ftol=1e-15, gtol=1e-15
    )
    sets.append(
        {
            "name": name,
            "pairs": [{"normal": float(x), "friction": float(y)} for x, y in zip(loads, friction)],
            "origin": [float(slope0), float(np.sqrt(rss0 / (loads.size - 1) / np.sum(loads**2)))],
            "line": [line.slope, line.stderr, line.intercept, line.intercept_stderr],
            "power": [power[0], float(np.sqrt(cov[0, 0])), power[1], float(np.sqrt(cov[1, 1]))],
        }
    )
student = {str(n): float(stats.t.ppf(0.975, n)) for n in (1, 2, 3, 4, 5, 6, 7, 10, 34, 100)}
with open("reference.json", "w") as file:
    json.dump({"sets": sets, "student": student}, file, indent="\t")
    file.write("\n")
