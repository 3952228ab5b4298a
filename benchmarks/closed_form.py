#!/usr/bin/env python3
"""The closed-form study of the benchmarks in NumPy: break torque of rows over the same three columns.

Run with Debian's python3-numpy: /usr/bin/python3 benchmarks/closed_form.py
With --serve it waits for lines "torque N" and "sampled N" and answers each with the nanoseconds of a call, to be timed by turns with others.
"""
import sys
import time

import numpy

ROWS = 65_536
random = numpy.random.default_rng(1)
area, tau, radius = (random.random(ROWS) for _ in range(3))


def break_torque():
    return 2.0 * area * tau * radius


def best(function, rounds=300):
    least = float("inf")
    for _ in range(rounds):
        start = time.perf_counter()
        function()
        least = min(least, time.perf_counter() - start)
    return least


def sampled():
    a = 60e-6 + 20e-6 * random.random(ROWS)
    t = 4e8 + 1e8 * random.random(ROWS)
    r = 0.015 + 0.002 * random.random(ROWS)
    return 2.0 * a * t * r


def serve():
    print("ready", flush=True)
    functions = {"torque": break_torque, "sampled": sampled}
    for line in sys.stdin:
        name, calls = line.split()
        function = functions[name]
        start = time.perf_counter()
        for _ in range(int(calls)):
            function()
        print((time.perf_counter() - start) / int(calls) * 1e9, flush=True)


if "--serve" in sys.argv:
    serve()
else:
    print(f"numpy {numpy.__version__}: {best(break_torque) / ROWS * 1e9:.3f} ns a row for the torque alone, "
          f"{best(sampled) / ROWS * 1e9:.3f} ns a row with three sampled columns")
