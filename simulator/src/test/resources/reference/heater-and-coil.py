"""Makes heater-and-coil.tsv: a fog maker's block and a relay's coil, integrated by SciPy and by no formula of the project.

Block (handbook 2.3): 600 J/K, 1.2 K/W, 700 W, air at 20 C, thermostat 250/240 C. Burst: 40 g/min of 20 % propylene glycol in
water from 250 C with the heater on (handbook 2.2 case 4: 2333.3 kJ/kg, here to more digits).
Coil (handbook 3.5): 2.29 H, 275 ohm, 12 V, opened on its steady current with 0.7 V and with 24.7 V across it.
"""
import scipy
from scipy.integrate import solve_ivp

C, R, P, AIR = 600.0, 1.2, 700.0, 20.0
SETTINGS = dict(method="DOP853", rtol=1e-11, atol=1e-11)
GLYCOL_J_PER_KG = (189.9 * (186.85 - AIR) + 67e3) / 0.076095
WATER_J_PER_KG = 4190.0 * (100.0 - AIR) + 2257e3
TAKEN_W = 0.040 / 60 * (0.8 * WATER_J_PER_KG + 0.2 * GLYCOL_J_PER_KG)


def block(heater_w, taken_w):
    return lambda t, y: [(heater_w - taken_w - (y[0] - AIR) / R) / C]


def reaches(target, heater_w, taken_w, from_c):
    def event(t, y):
        return y[0] - target

    event.terminal = True
    solved = solve_ivp(block(heater_w, taken_w), (0, 5000), [from_c], events=event, **SETTINGS)
    return solved.t_events[0][0]


def coil(clamp_v, until_a):
    def event(t, y):
        return y[0] - until_a

    event.terminal = True
    solved = solve_ivp(lambda t, y: [(-275.0 * y[0] - clamp_v) / 2.29], (0, 1), [12.0 / 275.0], events=event, **SETTINGS)
    return solved.t_events[0][0]


def after(time_s, heater_w, taken_w, from_c):
    return solve_ivp(block(heater_w, taken_w), (0, time_s), [from_c], **SETTINGS).y[0][-1]


ROWS = [
    ("warm-up", "s", reaches(250.0, P, 0.0, AIR)),
    ("after-100", "degC", after(100.0, P, 0.0, AIR)),
    ("off-time", "s", reaches(240.0, 0.0, 0.0, 250.0)),
    ("on-time", "s", reaches(250.0, P, 0.0, 240.0)),
    ("burst-not-ready", "s", reaches(210.0, P, TAKEN_W, 250.0)),
    ("burst-after-20", "degC", after(20.0, P, TAKEN_W, 250.0)),
    ("coil-diode-15", "s", coil(0.7, 0.15 * 12 / 275)),
    ("coil-zener-15", "s", coil(24.7, 0.15 * 12 / 275)),
    ("coil-zener-0", "s", coil(24.7, 0.0)),
]
with open("heater-and-coil.tsv", "w", encoding="utf-8") as out:
    out.write(f"# SciPy {scipy.__version__}, solve_ivp, DOP853 at 1e-11; made by heater-and-coil.py\n")
    for name, unit, value in ROWS:
        out.write(f"{name}\t{value:.10g}\t{unit}\n")
