#!/usr/bin/env python3
"""Reference transients for the torsion tests, by general-purpose Runge-Kutta integration.

Each case is written out as its own equations of motion in the parts' own coordinates and split at its events.
Method: scipy.integrate.solve_ivp, DOP853, rtol 1e-12, atol 1e-14, largest step 5e-5 s; events by its root search;
peaks by a root search on the rate of the quantity. Writes transients.csv and transients-about.csv to the folder
given as the only argument (the repository's shared/reference/torsion).
"""
import csv
import platform
import sys

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

ROWS = []


def integrate(case, modes, mode, y, end, clock=()):
    """modes: name -> dict(f=rhs, q={quantity: (t, y) -> value}, ev=[(g, direction, label, next(t, y))]).
    clock: [(time, label, next(t, y))]. Returns the final state; appends events and peaks to ROWS."""
    y = numpy.array(y, float)
    t = 0.0
    clock = list(clock)
    best = {}
    counts = {}

    def note(label, when):
        if label:
            counts[label] = counts.get(label, 0) + 1
            ROWS.append((case, "event", f"{label}{counts[label]}", when, "s"))

    def better(name, value, when):
        for key, v in ((name, value), ("-" + name, -value)):
            if key not in best or v > best[key][0]:
                best[key] = (v, when)

    while t < end:
        while clock and clock[0][0] <= t:
            _, label, jump = clock.pop(0)
            mode, y = jump(t, y)
            note(label, t)
        m = modes[mode]
        stop = min(end, clock[0][0]) if clock else end
        gs = []
        for g, direction, _, _ in m.get("ev", []):
            fun = (lambda g: lambda s, z: g(s, z))(g)
            fun.terminal, fun.direction = True, direction
            gs.append(fun)
        sol = solve_ivp(m["f"], (t, stop), y, method="DOP853", rtol=1e-12, atol=1e-14, max_step=5e-5,
                        dense_output=True, events=gs or None)
        assert sol.status >= 0, sol.message
        for name, q in m["q"].items():
            ts = numpy.unique(numpy.concatenate([sol.t, 0.5 * (sol.t[1:] + sol.t[:-1])]))
            vs = numpy.array([q(s, sol.sol(s)) for s in ts])
            better(name, vs[0], ts[0])
            better(name, vs[-1], ts[-1])

            def rate(s, d=1e-6):
                lo, hi = max(sol.t[0], s - d), min(sol.t[-1], s + d)
                return (q(hi, sol.sol(hi)) - q(lo, sol.sol(lo))) / (hi - lo)

            for sign in (1, -1):
                key = name if sign > 0 else "-" + name
                i = int(numpy.argmax(sign * vs))
                if 0 < i < len(ts) - 1 and sign * vs[i] > best[key][0] - 1e-3 * abs(best[key][0]):
                    a, b = ts[i - 1], ts[i + 1]
                    if rate(a) * rate(b) < 0:
                        s = brentq(rate, a, b, xtol=1e-15)
                        if sign * q(s, sol.sol(s)) > best[key][0]:
                            best[key] = (sign * q(s, sol.sol(s)), s)
        t, y = sol.t[-1], sol.y[:, -1]
        if sol.status == 1:
            i = [k for k, e in enumerate(sol.t_events) if len(e)][0]
            t, y = sol.t_events[i][0], sol.y_events[i][0]
            _, _, label, jump = m["ev"][i]
            mode, y = jump(t, numpy.array(y))
            note(label, t)
    for name, (v, when) in best.items():
        if v > 0:
            ROWS.append((case, "reversePeak" if name[0] == "-" else "peak", name.lstrip("-"), v, "N.m"))
            ROWS.append((case, "reversePeakTime" if name[0] == "-" else "peakTime", name.lstrip("-"), when, "s"))
    return y


def final(case, part, value, unit):
    ROWS.append((case, "final", part, value, unit))


W = 56.5


def c01():
    J, k = [0.9, 0.05, 0.12], [18000, 6500, 24000]

    def f(t, y):
        e, w = y[:3], y[3:]
        T = [k[i] * e[i] for i in range(3)]
        return [w[0] - w[1], w[1] - w[2], w[2], (350 - T[0]) / J[0], (T[0] - T[1]) / J[1], (T[1] - T[2]) / J[2]]

    q = {f"s{i+1}": (lambda i: lambda t, y: k[i] * y[i])(i) for i in range(3)}
    y = integrate("c01", {"a": dict(f=f, q=q)}, "a", [0, 0, 0, W, W, W], 0.25)
    final("c01", "r1", y[3], "rad/s")


def c02():
    J, k, c, i1 = [0.9, 0.08, 0.4, 1.2], [18000, 6500, 3000], [2.0, 0.7, 0.5], 1.47
    ko, co = 9000, 4.0

    def torques(y):
        w1, w2, w3, w4 = y[3:7]
        return (k[0] * y[0] + c[0] * (w1 - w2 / i1), k[1] * y[1] + c[1] * (w2 - w3), k[2] * y[2] + c[2] * (w3 - w4))

    def rhs(obstacle, face):
        def f(t, y):
            w1, w2, w3, w4 = y[3:7]
            T1, T2, T3 = torques(y)
            To = obstacle(y)
            return [w1 - w2 / i1, w2 - w3, w3 - w4, (400 + 12 * (56 - w1) - T1) / J[0], (T1 / i1 - T2) / J[1],
                    (T2 - T3) / J[2], (T3 - To - 1.1 * w4) / J[3], w4, face(y)]
        return f

    touch = lambda y: ko * y[7] + co * y[6]
    q = {"s1": lambda t, y: torques(y)[0], "s2": lambda t, y: torques(y)[1], "s3": lambda t, y: torques(y)[2]}
    modes = {
        "before": dict(f=rhs(lambda y: 0, lambda y: 0), q=q),
        "touch": dict(f=rhs(touch, lambda y: y[6]), q={**q, "o": lambda t, y: touch(y)},
                      ev=[(lambda t, y: touch(y), -1, "parted", lambda t, y: ("apart", y))]),
        "apart": dict(f=rhs(lambda y: 0, lambda y: -ko / co * y[8]), q=q,
                      ev=[(lambda t, y: y[7] - y[8], 1, "met", lambda t, y: ("touch", y))]),
    }
    begin = lambda t, y: ("touch", numpy.concatenate([y[:7], [0, 0]]))
    y = integrate("c02", modes, "before", [0, 0, 0, W, W * i1, W * i1, W * i1, 0, 0], 0.2, [(0.05, "", begin)])
    final("c02", "r4", y[6], "rad/s")


def c03():
    J, k, c = [1.1, 0.06, 0.1, 4.0], [20000, 8000, 15000], [1.5, 0.4, 0.9]

    def rhs(jam, broken):
        def f(t, y):
            w1, w2, w3, w4 = y[3:7]
            T1 = k[0] * y[0] + c[0] * (w1 - w2)
            T2 = 0 if broken else k[1] * y[1] + c[1] * (w2 - w3)
            T3 = k[2] * y[2] + c[2] * (w3 - w4)
            return [w1 - w2, w2 - w3, w3 - w4, (300 + 20 * (W - w1) - T1) / J[0], (T1 - T2) / J[1], (T2 - T3) / J[2],
                    0 if jam else T3 / J[3]]
        return f

    t1 = lambda t, y: k[0] * y[0] + c[0] * (y[3] - y[4])
    t2 = lambda t, y: k[1] * y[1] + c[1] * (y[4] - y[5])
    t3 = lambda t, y: k[2] * y[2] + c[2] * (y[5] - y[6])
    snap = [(lambda t, y: t2(t, y) - 1500, 1, "broke", lambda t, y: ("broken", y))]
    modes = {
        "free": dict(f=rhs(False, False), q={"s1": t1, "s2": t2, "s3": t3}),
        "jam": dict(f=rhs(True, False), q={"s1": t1, "s2": t2, "s3": t3}, ev=snap),
        "broken": dict(f=rhs(True, True), q={"s1": t1, "s3": t3}),
    }
    stop = lambda t, y: ("jam", numpy.concatenate([y[:6], [0]]))
    y = integrate("c03", modes, "free", [0, 0, 0, W, W, W, W], 0.2, [(0.02, "", stop)])
    final("c03", "r1", y[3], "rad/s")


def c04():
    J, k, c = [1.1, 0.06, 0.1], [20000, 8000, 15000], [1.5, 0, 0.9]

    def rhs(carry):
        def f(t, y):
            w1, w2, w3 = y[3:6]
            T1 = k[0] * y[0] + c[0] * (w1 - w2)
            T2 = k[1] * y[1] if carry is None else carry
            T3 = k[2] * y[2] + c[2] * w3
            slip = 0 if carry is None else w2 - w3
            return [w1 - w2, w2 - w3 - slip, w3, (300 - T1) / J[0], (T1 - T2) / J[1], (T2 - T3) / J[2], abs(carry or 0) * abs(slip)]
        return f

    t1 = lambda t, y: k[0] * y[0] + c[0] * (y[3] - y[4])
    t2 = lambda t, y: k[1] * y[1]
    t3 = lambda t, y: k[2] * y[2] + c[2] * y[5]
    q = {"s1": t1, "s2": t2, "s3": t3}
    side = lambda s: lambda t, y: (s, numpy.concatenate([y[:1], [(200 if s == "fwd" else -200) / k[1]], y[2:]]))
    keep = lambda t, y: ("stuck", y)
    modes = {
        "whole": dict(f=rhs(None), q=q, ev=[(lambda t, y: t2(t, y) - 1500, 1, "broke", side("fwd"))]),
        "fwd": dict(f=rhs(200), q=q, ev=[(lambda t, y: y[4] - y[5], -1, "stuck", keep)]),
        "back": dict(f=rhs(-200), q=q, ev=[(lambda t, y: y[4] - y[5], 1, "stuck", keep)]),
        "stuck": dict(f=rhs(None), q=q, ev=[(lambda t, y: t2(t, y) - 200, 1, "slip", side("fwd")),
                                            (lambda t, y: t2(t, y) + 200, -1, "slip", side("back"))]),
    }
    y = integrate("c04", modes, "whole", [0, 0, 0, W, W, W, 0], 0.2)
    final("c04", "heat", y[6] + (1500 ** 2 - 200 ** 2) / (2 * k[1]), "J")
    final("c04", "r1", y[3], "rad/s")


def clutch(case, damping):
    """flywheel - (shaft 1 + slip clutch) - hub - shaft 2 - jammed end, constant drive torque."""
    J1, J2, k1, k2, c2, Ts, Tk = 0.5, 0.3, 2000, 9000, 1.0, 800, 650

    def lock(y):
        return k1 * y[0] + damping * (y[2] - y[3])

    def rhs(carry):
        def f(t, y):
            e1, e2, w1, w2 = y[:4]
            T2 = k2 * e2 + c2 * w2
            if carry is None:
                T1, e1d, slip = lock(y), w1 - w2, 0
            else:
                T1 = carry
                e1d = (carry - k1 * e1) / damping if damping else 0
                slip = w1 - w2 - e1d
            return [e1d, w2, (300 - T1) / J1, (T1 - T2) / J2, T1 * slip]
        return f

    def unwind(s):
        def jump(t, y):
            if not damping:
                y[4] += (y[0] ** 2 - (Tk / k1) ** 2) * k1 / 2
                y[0] = s * Tk / k1
            return ("fwd" if s > 0 else "back"), y
        return jump

    v = lambda carry: lambda t, y: y[2] - y[3] - ((carry - k1 * y[0]) / damping if damping else 0)
    t2 = lambda t, y: k2 * y[1] + c2 * y[3]
    modes = {
        "lock": dict(f=rhs(None), q={"s1": lambda t, y: lock(y), "s2": t2},
                     ev=[(lambda t, y: lock(y) - Ts, 1, "slip", unwind(1)), (lambda t, y: lock(y) + Ts, -1, "slip", unwind(-1))]),
        "fwd": dict(f=rhs(Tk), q={"s2": t2}, ev=[(v(Tk), -1, "stuck", lambda t, y: ("lock", y))]),
        "back": dict(f=rhs(-Tk), q={"s2": t2}, ev=[(v(-Tk), 1, "stuck", lambda t, y: ("lock", y))]),
    }
    y = integrate(case, modes, "lock", [0, 0, W, W, 0], 0.3)
    final(case, "heat", y[4], "J")
    final(case, "r1", y[2], "rad/s")


def c07():
    J1, J2, J3, k, c = 1.4, 0.15, 2.2, 12000, 1.2

    def scale(t):
        return min(max((t - 0.01) / 0.08, 0), 1)

    def drive(y):
        return 280 + 6 * (56 - y[1])

    def shaft(y):
        return k * y[0] + c * (y[2] - y[3])

    def hold(y):
        a = (drive(y) - shaft(y)) / (J1 + J2)
        return drive(y) - J1 * a

    def rhs(stuck):
        def f(t, y):
            Ts = shaft(y)
            a3 = (Ts - 0.8 * y[3]) / J3
            if stuck:
                a = (drive(y) - Ts) / (J1 + J2)
                return [y[2] - y[3], a, a, a3, 0]
            Tc = 700 * scale(t)
            return [y[2] - y[3], (drive(y) - Tc) / J1, (Tc - Ts) / J2, a3, Tc * (y[1] - y[2])]
        return f

    q = {"s": lambda t, y: shaft(y)}
    modes = {
        "slip": dict(f=rhs(False), q={**q, "clutch": lambda t, y: 700 * scale(t)}, ev=[(lambda t, y: y[1] - y[2], -1, "stuck", lambda t, y: ("stuck", y))]),
        "stuck": dict(f=rhs(True), q={**q, "clutch": lambda t, y: hold(y)},
                      ev=[(lambda t, y: hold(y) - 900 * scale(t), 1, "slip", lambda t, y: ("slip", y))]),
    }
    go = lambda t, y: ("slip", y)
    y = integrate("c07", modes, "slip", [0, W, 0, 0, 0], 0.5, [(0.01, "", go), (0.09, "", lambda t, y: ("slip" if y[1] - y[2] > 1e-9 else "stuck", y))])
    final("c07", "heat", y[4], "J")
    final("c07", "r3", y[3], "rad/s")


def c08():
    J, k, c, Ts, Tk = 0.5, 2000, 2.0, 300, 240
    T = lambda y: k * y[0] + c * (1 - y[1])
    modes = {
        "stick": dict(f=lambda t, y: [1, 0, 0], q={"s": lambda t, y: k * y[0] + c},
                      ev=[(lambda t, y: k * y[0] + c - Ts, 1, "slip", lambda t, y: ("slip", y))]),
        "slip": dict(f=lambda t, y: [1 - y[1], (T(y) - Tk) / J, Tk * y[1]], q={"s": lambda t, y: T(y)},
                     ev=[(lambda t, y: y[1] - 1e-300, -1, "stuck", lambda t, y: ("stick", numpy.array([y[0], 0, y[2]])))]),
    }
    y = integrate("c08", modes, "stick", [0, 0, 0], 0.6)
    final("c08", "heat", y[2], "J")


def c09():
    J1, J2, k, c = 1.0, 2.5, 10000, 2.0

    def push(t):
        return 84.75 if t < 0.05 else (-400 if t < 0.15 else 1500)

    def rhs(over, torque):
        def f(t, y):
            T = 0 if over else k * y[0] + c * (y[1] - y[2])
            ed = -k * y[0] / c if over else y[1] - y[2]
            return [ed, (torque - T) / J1, (T - 1.5 * y[2]) / J2]
        return f

    T = lambda t, y: k * y[0] + c * (y[1] - y[2])
    modes = {}
    for name, torque in (("A", 84.75), ("B", -400), ("C", 1500)):
        modes["on" + name] = dict(f=rhs(False, torque), q={"s": T},
                                  ev=[(T, -1, "overrun", lambda t, y, n=name: ("over" + n, y))])
        modes["over" + name] = dict(f=rhs(True, torque), q={},
                                    ev=[(lambda t, y: y[1] - y[2] + k * y[0] / c, 1, "drives", lambda t, y, n=name: ("on" + n, y))])
    state = {"m": "onA"}

    def follow(n):
        def jump(t, y):
            over = abs(y[1] - y[2] + k * y[0] / c) > 1e-6
            return ("over" if over and n == "C" else "on") + n, y
        return jump

    y = integrate("c09", modes, state["m"], [84.75 / k, W, W], 0.4, [(0.05, "", follow("B")), (0.15, "", follow("C"))])
    final("c09", "r2", y[2], "rad/s")


def c10():
    J, k, play = [0.3, 0.2, 0.6], [5000, 8000], 0.05

    def rhs(open_):
        def f(t, y):
            e1, u, e2, w1, w2, w3 = y
            T1 = 0 if open_ else k[0] * e1
            return [0 if open_ else w1 - w2, w1 - w2 if open_ else 0, w2 - w3, (-50 - T1) / J[0], (T1 - k[1] * e2) / J[1], k[1] * e2 / J[2]]
        return f

    q = {"s1": lambda t, y: k[0] * y[0], "s2": lambda t, y: k[1] * y[2]}
    still = lambda m, u=None: lambda t, y: (m, numpy.array([0, y[1] if u is None else u, *y[2:]]))
    modes = {
        "front": dict(f=rhs(False), q=q, ev=[(lambda t, y: y[0], -1, "parted", still("open", 0))]),
        "back": dict(f=rhs(False), q=q, ev=[(lambda t, y: y[0], 1, "parted", still("open", -play))]),
        "open": dict(f=rhs(True), q={"s2": q["s2"]}, ev=[(lambda t, y: y[1] - 1e-300, 1, "met", still("front", 0)),
                                                        (lambda t, y: y[1] + play, -1, "met", still("back", -play))]),
    }
    y = integrate("c10", modes, "front", [0, 0, 0, 30, 20, 20], 0.2)
    final("c10", "r3", y[5], "rad/s")


def c11():
    J1, J2, k, c, ko = 0.8, 0.5, 3000, 0.8, 20000

    def rhs(carry, absent=False):
        def f(t, y):
            e, w1, w2, d, u = y
            T = k * e + c * (w1 - w2)
            To = 0 if absent else ko * d if carry is None else carry
            free = carry is not None
            return [w1 - w2, (250 - T) / J1, (T - To) / J2, 0 if free or absent else w2, w2 if free else 0]
        return f

    s = lambda t, y: k * y[0] + c * (y[1] - y[2])
    o = lambda t, y: ko * y[3]
    q = {"s": s, "o": o}
    part = lambda t, y: ("apart", numpy.array([*y[:3], 0, 0]))
    modes = {
        "before": dict(f=rhs(None, True), q={"s": s}),
        "swing0": dict(f=rhs(None), q=q, ev=[(lambda t, y: o(t, y) - 200, 1, "yield", lambda t, y: ("swing", y))]),
        "swing": dict(f=rhs(200), q=q, ev=[(lambda t, y: y[4] - 0.3, 1, "swung", lambda t, y: ("stump", y))]),
        "stump": dict(f=rhs(None), q=q, ev=[(lambda t, y: o(t, y) - 2500, 1, "yield", lambda t, y: ("crush", y)), (o, -1, "parted", part)]),
        "crush": dict(f=rhs(2500), q=q, ev=[(lambda t, y: y[2], -1, "rest", lambda t, y: ("stump", y))]),
        "apart": dict(f=rhs(0), q={"s": s}, ev=[(lambda t, y: y[4] - 1e-300, 1, "met", lambda t, y: ("stump", y))]),
    }
    y = integrate("c11", modes, "before", [0, W, W, 0, 0], 0.15, [(0.01, "", lambda t, y: ("swing0", y))])
    final("c11", "r1", y[1], "rad/s")


def c12():
    J1, J2, k, c, beta, phase = 0.9, 0.7, 6000, 1.0, numpy.radians(25), 0.3

    def R(th):
        return numpy.cos(beta) / (1 - (numpy.sin(beta) * numpy.cos(th + phase)) ** 2)

    T = lambda t, y: k * y[0] + c * (y[1] * R(y[3]) - y[2])

    def f(t, y):
        r = R(y[3])
        return [y[1] * r - y[2], (300 + 8 * (W - y[1]) - T(t, y) * r) / J1, (T(t, y) - 4 * y[2]) / J2, y[1]]

    y = integrate("c12", {"a": dict(f=f, q={"s": T})}, "a", [0, W, W, 0], 0.5)
    final("c12", "r2", y[2], "rad/s")


def c13():
    J1, J2, k, c, ko, co = 1.0, 0.6, 9000, 1.5, 30000, 5.0

    def rhs(limit, hit):
        def f(t, y):
            e, w1, w2, d = y
            T = k * e + c * (w1 - w2)
            D = limit if limit is not None else 200 + 50 * (56 - w1)
            return [w1 - w2, (D - T) / J1, (T - 2 * w2 - (ko * d + co * w2 if hit else 0)) / J2, w2 if hit else 0]
        return f

    line = lambda t, y: 200 + 50 * (56 - y[1])
    q = {"s": lambda t, y: k * y[0] + c * (y[1] - y[2])}
    o = lambda t, y: ko * y[3] + co * y[2]
    modes = {
        "free": dict(f=rhs(None, False), q=q),
        "hit": dict(f=rhs(None, True), q={**q, "o": o}, ev=[(lambda t, y: line(t, y) - 600, 1, "limited", lambda t, y: ("most", y)),
                                                           (line, -1, "limited", lambda t, y: ("least", y))]),
        "most": dict(f=rhs(600, True), q={**q, "o": o}, ev=[(lambda t, y: line(t, y) - 600, -1, "line", lambda t, y: ("hit", y))]),
        "least": dict(f=rhs(0, True), q={**q, "o": o}, ev=[(line, 1, "line", lambda t, y: ("hit", y))]),
    }
    integrate("c13", modes, "free", [0, W, W, 0], 0.036, [(0.02, "", lambda t, y: ("hit", y))])


def c14():
    J, k, c, i = [0.3, 0.2, 0.5, 0.1], [4000, 7000, 2500], [0.5, 0, 0.2], 2.0
    push = lambda t: 100 * min(max((t - 0.01) / 0.005, 0), 1)

    def T(y):
        return (k[0] * y[0] + c[0] * (y[3] - y[4]), k[1] * y[1], k[2] * y[2] + c[2] * (y[3] - y[6]))

    def f(t, y):
        w0, w1, w2, w3 = y[3:]
        a, b, d = T(y)
        return [w0 - w1, w0 - w2 / i, w0 - w3, (push(t) - a - b - d) / J[0], a / J[1], b / i / J[2], d / J[3]]

    q = {f"s{n+1}": (lambda n: lambda t, y: T(y)[n])(n) for n in range(3)}
    m = {"a": dict(f=f, q=q)}
    stay = lambda t, y: ("a", y)
    y = integrate("c14", m, "a", [0] * 7, 0.2, [(0.01, "", stay), (0.015, "", stay)])
    final("c14", "r2", y[5], "rad/s")


for case in (c01, c02, c03, c04, lambda: clutch("c05", 0), lambda: clutch("c06", 3.0), c07, c08, c09, c10, c11, c12, c13, c14):
    case()

folder = sys.argv[1]
with open(folder + "/transients.csv", "w", newline="") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["case", "quantity", "part", "value", "unit"])
    writer.writerows([(a, b, c, repr(float(d)), e) for a, b, c, d, e in ROWS])
with open(folder + "/transients-about.csv", "w", newline="") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["what", "value"])
    writer.writerows([("script", "tests/torsion-reference/reference_transients.py"), ("python", platform.python_version()),
                      ("scipy", scipy.__version__), ("numpy", numpy.__version__),
                      ("method", "solve_ivp DOP853 rtol 1e-12 atol 1e-14 max_step 5e-5 s, split at events")])
