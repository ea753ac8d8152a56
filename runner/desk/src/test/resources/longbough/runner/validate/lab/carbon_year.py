"""A tree's sugar over a year as one differential equation, from the numbers on standard input.

Written down a second time from the documentation of the model, and solved by SciPy: what leaves
earn in the light of their cell, what leaves, wood and fine roots respire, and what of the rest the
reserve keeps. Prints the reserve and the growth budget at the end of each month, kg C.
"""
import json
import math
import sys

from scipy.integrate import solve_ivp

p = json.load(sys.stdin)
KG_C_PER_UMOL = 12.011e-9
DAYS = 30.4
HOUR_S = 3600.0


def earned(m):
    """Assimilation of the month, kg C."""
    day_s = p["day_h"][m] * HOUR_S
    warm = 1 - ((p["t"][m] + p["daytime_warmth"] - p["t_opt"]) / p["t_width"]) ** 2
    if warm <= 0 or p["leaf_on"][m] == 0:
        return 0.0
    photons = p["radiation"][m] * 1e6 * p["par_share"] * p["photons_per_joule"] / day_s
    gross = p["capacity"] * (1 + p["dark_ratio"])
    total = 0.0
    clear = p["radiation"][m] / p["above_air"][m]
    beams = min(1.0, p["beam_slope"] * clear)
    shining = min(1.0, (clear / p["clear_sky"]) ** 2)
    for leaf, light in zip(p["leaf_m2"], p["light"]):
        top = gross * sun_share(light)
        could = p["quantum_yield"] * p["absorptance"] * photons
        shade = could * (1 - beams) * light
        sun = shade + could * beams * p["unshaded"] / shining
        sunlit = shining * light / p["unshaded"]
        total += leaf * (sunlit * top * sun / (top + sun) + (1 - sunlit) * top * shade / (top + shade))
    # An ailment that the crown doesn't show yet thirsts as well.
    ailing = p["hidden"] * p["ailment"] * (1 - p["decline"])
    carried = 1 - p["thirst"] * (p["decline"] + ailing)
    return p["uneven"] * total * KG_C_PER_UMOL * day_s * DAYS * warm * p["leaf_on"][m] * carried


def sun_share(light):
    return p["shade"] + (1 - p["shade"]) * min(1.0, light / p["full_sun"])


def leaf_respiration(m):
    """Of the month, kg C."""
    day = p["day_h"][m]
    grown = (p["t"][m] + p["t"][m - 1]) / 2
    seconds = (24 - day + p["day_share"] * day) * HOUR_S * DAYS
    rate = p["dark_ratio"] * p["capacity"] * sum(
        leaf * sun_share(light) for leaf, light in zip(p["leaf_m2"], p["light"]))
    warm = p["q10"] ** ((p["t"][m] - 25) / 10) * 10 ** (-p["acclimation"] * (grown - 25))
    return rate * KG_C_PER_UMOL * seconds * warm * p["leaf_on"][m]


def wood_respiration(m, income):
    """Of wood and fine roots well fed from the store, kg C a month; income is what leaves send."""
    inner = 1 - min(1.0, p["active_m"] / (p["dbh_m"] / 2))
    active = min(p["sapwood_share"], 1 - inner * inner)
    living = p["branch_living"] * p["limbs"] + active * (p["trunk"] + p["coarse_roots"])
    warm = p["q10"] ** ((p["t"][m] - 10) / 10) / 12
    mean = (p["season_capacity"] - p["shade"]) / (p["mean_leaf"] - p["shade"])
    warm *= p["suppressed"] + (1 - p["suppressed"]) * min(1.0, max(0.0, mean))
    wood = p["wood_rate"] * living * warm
    roots = p["root_rate"] * p["fine_roots"] * warm
    # Part of the roots' respiration ends where the day's sugar doesn't pay for it.
    short = 1 - min(1.0, max(0.0, income) / (wood + roots))
    return wood + roots * (1 - p["current_sugar"] * short)


def set_point(m):
    spring, late = p["spring_set_point"], p["set_point"]
    return p["ceiling"] * (spring if m < 6 else (spring + late) / 2 if m == 6 else late)


def slope(m, gross, leaf, wood):
    goal, ceiling = set_point(m), p["ceiling"]

    def of(_, y):
        reserve = y[0]
        x = min(1.0, max(0.0, reserve - p["floor"]) / (p["full_respiration"] * ceiling))
        net = gross - leaf - wood * x * (1 + p["half"]) / (x + p["half"])
        if p["leaf_on"][m] <= 0.5:
            return [net, 0.0]
        if net <= 0:
            stored = 1.0
        elif reserve < goal:
            stored = min(1.0, p["storage_least"] + p["storage_slope"] * (1 - reserve / goal))
        else:
            stored = p["storage_least"] * (ceiling - reserve) / (ceiling - goal)
        kept = stored * net - p["release"] * max(0.0, reserve - goal)
        return [kept, net - kept]

    return of


state = [p["start"], 0.0]
for month in range(12):
    gross, leaf = earned(month), leaf_respiration(month)
    rhs = slope(month, gross, leaf, wood_respiration(month, gross - leaf))
    done = solve_ivp(rhs, (0.0, 1.0), state, method="DOP853", rtol=1e-10, atol=1e-12, max_step=0.01)
    assert done.success and all(math.isfinite(v) for v in done.y[:, -1])
    # Before the leaves are out nothing grows, and what the wood can't hold is lost.
    state = [min(p["ceiling"], done.y[0, -1]), done.y[1, -1]]
    print(repr(float(state[0])), repr(float(state[1])))
