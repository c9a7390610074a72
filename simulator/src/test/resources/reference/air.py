#!/usr/bin/env python3
"""Reference values for compressed air: made once with SciPy, kept as air.tsv. Formulas: handbook 1.3, 1.6, 1.9 (ISO 6358-1).

Run it as  python3 air.py > air.tsv  after changing a case."""
import sys

import numpy
import scipy
from scipy.integrate import solve_ivp

ATM = 101325.0
ANR = 100000.0
G = 9.80665
LINEAR = 0.999


def flow(c, b, p1, p2):
    """m3 ANR a second from p1 to p2 (Pa abs), c in m3/(s Pa), 20 degC."""
    if p2 > p1:
        return -flow(c, b, p2, p1)
    r = p2 / p1
    if r <= b:
        return c * p1
    if r > LINEAR:
        return c * p1 * numpy.sqrt(1 - ((LINEAR - b) / (1 - b)) ** 2) * (1 - r) / (1 - LINEAR)
    return c * p1 * numpy.sqrt(1 - ((r - b) / (1 - b)) ** 2)


def blow_down(volume, c, b, p0, p1):
    """Seconds for a tank from p0 to p1 (Pa abs) into the open, isothermal."""
    event = lambda t, y: y[0] - p1
    event.terminal = True
    solution = solve_ivp(lambda t, y: [-flow(c, b, y[0], ATM) * ANR / volume], (0, 1000), [p0],
                         method="DOP853", rtol=1e-10, atol=1e-3, events=event, max_step=0.05)
    return solution.t[-1]


def stroke(bore, travel, mass, back, friction, dead, c, b, line, out):
    """Seconds and end speed of a single-acting stroke: out against a constant back force, or back from full pressure."""
    area = numpy.pi / 4 * bore ** 2
    volume = lambda x: dead + area * x

    def rhs(t, y):
        x, v, n = y
        p = n * ANR / volume(x)
        force = (p - ATM) * area - back
        direction = numpy.sign(v) if v != 0 else numpy.sign(force)
        net = force - direction * friction
        if v == 0 and abs(force) <= friction:
            net = 0.0
        if out and x <= 0 and net < 0 or (not out and x >= travel and net > 0):
            net = 0.0
        source = line if out else ATM
        return [v, net / mass, flow(c, b, source, p)]

    begin = 0.0 if out else travel
    pressure = ATM if out else line
    event = lambda t, y: (travel - y[0]) if out else y[0]
    event.terminal = True
    event.direction = -1
    solution = solve_ivp(rhs, (0, 20), [begin, 0.0, pressure * volume(begin) / ANR],
                         method="DOP853", rtol=1e-9, atol=1e-12, events=event, max_step=1e-4)
    return solution.t[-1], abs(solution.y[1][-1])


CASES = [
    # name, bore m, travel m, mass kg, back N, friction N, dead m3, C m3/(s Pa), b, line Pa abs
    ("32mm-4bar", 0.032, 0.30, 3.0, 3.0 * G, 15.0, 2.0e-5, 1.0e-8, 0.3, 501325.0),
    ("25mm-2.5bar", 0.025, 0.25, 2.5, 2.5 * G, 12.0, 1.0e-5, 0.3e-8, 0.3, 351325.0),
    ("25mm-slow", 0.025, 0.25, 2.5, 2.5 * G, 12.0, 1.0e-5, 0.05e-8, 0.3, 351325.0),
]

print("# SciPy %s, NumPy %s, DOP853 at 1e-9 or finer; made by air.py" % (scipy.__version__, numpy.__version__))
print("case\tquantity\tvalue")
print("24l-8-to-4\tseconds\t%.9g" % blow_down(0.024, 1e-8, 0.3, 800000.0, 400000.0))
print("24l-8-to-1.1\tseconds\t%.9g" % blow_down(0.024, 1e-8, 0.3, 800000.0, 110000.0))
for name, bore, travel, mass, back, friction, dead, c, b, line in CASES:
    for out in (True, False):
        seconds, speed = stroke(bore, travel, mass, back, friction, dead, c, b, line, out)
        way = "out" if out else "back"
        print("%s\t%s-seconds\t%.9g" % (name, way, seconds))
        print("%s\t%s-speed\t%.9g" % (name, way, speed))
sys.stdout.flush()
