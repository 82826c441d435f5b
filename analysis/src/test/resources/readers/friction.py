"""Friction per metre by python3-fluids, for cases on standard input, one a line.

round DIAMETER ROUGHNESS FLOW DENSITY VISCOSITY           (m, m, m3/s, kg/m3, Pa s)
rectangle WIDE HIGH ROUGHNESS FLOW DENSITY VISCOSITY      likewise; Jones' factor on the Reynolds number
"""
import sys

from fluids.core import Reynolds
from fluids.friction import friction_factor, one_phase_dP
from math import pi

for line in sys.stdin:
    words = line.split()
    numbers = [float(word) for word in words[1:]]
    if words[0] == "round":
        diameter, rough, flow, rho, mu = numbers
        print(repr(one_phase_dP(flow * rho, rho, mu, diameter, roughness=rough, L=1.0, Method="Colebrook")))
    else:
        wide, high, rough, flow, rho, mu = numbers
        long, short = max(wide, high), min(wide, high)
        hydraulic = 2 * wide * high / (wide + high)
        speed = flow / (wide * high)
        phi = 2 / 3 + 11 / 24 * short / long * (2 - short / long)
        re = phi * Reynolds(V=speed, D=hydraulic, rho=rho, mu=mu)
        f = friction_factor(Re=re, eD=rough / hydraulic, Method="Colebrook")
        print(repr(f / hydraulic * rho * speed ** 2 / 2))
