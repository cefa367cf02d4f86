"""Charges by an electrochemical model, for the project's own model to be set beside: one JSON row a line.

Usage: reference.py [--short]
"""

import json
import sys

import pybamm

# Published parameter sets, and the chemistry that a pilot would call such a cell.
SETS = {
    "Chen2020": "Li-ion",
    "Mohtat2020": "Li-ion",
    "Ai2020": "LiPo",
    "Ecker2015": "LiPo",
    "Prada2013": "LiFe",
}
RATES_C = [0.3, 0.5, 1, 2]
STARTS = [0.05, 0.4, 0.8]
# The full model at these only: it takes its time.
FULL = [("Chen2020", 0.5, 0.05), ("Chen2020", 1, 0.4), ("Ecker2015", 1, 0.05), ("Ecker2015", 2, 0.4)]


def simulate(model, values, steps, soc):
    experiment = pybamm.Experiment(steps)
    return pybamm.Simulation(model(), parameter_values=values, experiment=experiment).solve(initial_soc=soc)


def lasts_s(step):
    times = step["Time [s]"].entries
    return float(times[-1] - times[0])


def charge_Ah(solution):
    entries = solution["Discharge capacity [A.h]"].entries
    return float(entries[0] - entries[-1])


def full_charge(values, rate_C, end="C/10"):
    full_V = values["Upper voltage cut-off [V]"]
    return [f"Charge at {rate_C}C until {full_V} V", f"Hold at {full_V} V until {end}"]


def reading_ohm(model, values):
    """What a meter reads within a second of a 1C load at half charge."""
    solution = simulate(model, values, ["Rest for 10 seconds", "Discharge at 1C for 1 second (0.1 second period)"], 0.5)
    volts = solution["Terminal voltage [V]"].entries
    amps = solution["Current [A]"].entries
    return float((volts[0] - volts[-1]) / amps[-1])


def rows(short):
    for name, chemistry in SETS.items():
        values = pybamm.ParameterValues(name)
        model = pybamm.lithium_ion.SPMe
        capacity_Ah = charge_Ah(simulate(model, values, full_charge(values, 0.05, "C/50"), 0.0))
        cell = {
            "set": name,
            "chemistry": chemistry,
            "nominal_Ah": float(values["Nominal cell capacity [A.h]"]),
            "capacity_Ah": capacity_Ah,
            "reading_ohm": reading_ohm(model, values),
            "cutoff_V": float(values["Upper voltage cut-off [V]"]),
        }
        grid = [(model, "SPMe", rate_C, soc) for rate_C in RATES_C for soc in STARTS]
        grid += [(pybamm.lithium_ion.DFN, "DFN", rate_C, soc) for (one, rate_C, soc) in FULL if one == name]
        for kind, title, rate_C, soc in grid[:2] if short else grid:
            rested = simulate(kind, values, ["Rest for 1 second"], soc)
            charge = simulate(kind, values, full_charge(values, rate_C), soc)
            steps = charge.cycles
            yield {
                **cell,
                "model": title,
                "rate_C": rate_C,
                "start": soc,
                "rest_V": float(rested["Terminal voltage [V]"].entries[0]),
                "cutoff_s": lasts_s(steps[0].steps[0]),
                "end_s": sum(lasts_s(step) for cycle in steps for step in cycle.steps),
                "charge_Ah": charge_Ah(charge),
            }


def main():
    pybamm.set_logging_level("ERROR")
    for row in rows("--short" in sys.argv):
        rounded = {key: float(f"{value:.6g}") if isinstance(value, float) else value for key, value in row.items()}
        print(json.dumps(rounded), flush=True)


main()
