#!/usr/bin/env python3
"""A crew problem as a model for OR-Tools CP-SAT, to compare with. Prints cost and proven bound.

usage: cpsat.py PROBLEM.json SECONDS      (pip install ortools)
One interval an operation and worker, a circuit of arcs for each worker's way, one decision for each close or wet pair. Eight
search workers, the least CP-SAT uses for its whole portfolio.
"""
import json
import sys

from ortools.sat.python import cp_model


def build(problem):
    model = cp_model.CpModel()
    ops, walk = problem["operations"], problem["walk_s"]
    place = {name: i for i, name in enumerate(problem["stances"])}
    index = {o["id"]: k for k, o in enumerate(ops)}
    at = [place[o["stance"]] for o in ops]
    takes = [o["duration_s"] for o in ops]
    step = lambda a, b: walk[at[a]][at[b]]
    horizon = sum(takes) + len(ops) * max(map(max, walk)) + sum(l["min_s"] for l in problem["lags"])
    start = [model.NewIntVar(0, horizon, f"start {o['id']}") for o in ops]
    finish = model.NewIntVar(0, horizon, "finish")
    does = [{w["id"]: model.NewBoolVar("") for w in problem["workers"] if o["role"] in w["roles"]} for o in ops]
    for k in range(len(ops)):
        model.AddExactlyOne(does[k].values())
        model.Add(finish >= start[k] + takes[k])
    walked = []
    for worker in (w["id"] for w in problem["workers"]):
        mine = [k for k in range(len(ops)) if worker in does[k]]
        model.AddNoOverlap([model.NewOptionalFixedSizeIntervalVar(start[k], takes[k], does[k][worker], "") for k in mine])
        rests = model.NewBoolVar("")
        arcs = [(0, 0, rests)]
        for a in mine:
            model.AddImplication(rests, does[a][worker].Not())
            arcs += [(0, a + 1, model.NewBoolVar("")), (a + 1, 0, model.NewBoolVar("")), (a + 1, a + 1, does[a][worker].Not())]
            for b in mine:
                if a != b:
                    goes = model.NewBoolVar("")
                    arcs.append((a + 1, b + 1, goes))
                    walked.append(step(a, b) * goes)
                    model.Add(start[b] >= start[a] + takes[a] + step(a, b)).OnlyEnforceIf(goes)
        model.AddCircuit(arcs)
    for lag in problem["lags"]:
        a, b = index[lag["from"]], index[lag["to"]]
        model.Add(start[b] >= start[a] + takes[a] + lag["min_s"])
        if lag["max_s"] is not None:
            model.Add(start[b] + takes[b] <= start[a] + takes[a] + lag["max_s"])
    near = {frozenset(pair) for pair in problem["close"]} | {frozenset([s]) for s in problem["stances"]}
    for a in range(len(ops)):
        for b in range(a):
            alone = len(does[a]) == 1 and does[a].keys() == does[b].keys()
            if frozenset([ops[a]["stance"], ops[b]["stance"]]) in near and not alone:
                first = model.NewBoolVar("")
                model.Add(start[b] >= start[a] + takes[a]).OnlyEnforceIf(first)
                model.Add(start[a] >= start[b] + takes[b]).OnlyEnforceIf(first.Not())
    for wet in problem["wet"]:
        a, b = index[wet["from"]], index[wet["to"]]
        for k in (index[name] for name in wet["blocks"]):
            after = model.NewBoolVar("")
            model.Add(start[k] >= start[b] + takes[b]).OnlyEnforceIf(after)
            model.Add(start[a] >= start[k] + takes[k]).OnlyEnforceIf(after.Not())
    weight = problem["objective"]
    model.Minimize(weight["makespan"] * finish + weight["walking"] * sum(walked))
    return model


def main():
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = float(sys.argv[2])
    solver.parameters.num_workers = 8
    status = solver.Solve(build(json.load(open(sys.argv[1]))))
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    print(int(solver.ObjectiveValue()) if found else "none", int(solver.BestObjectiveBound()))


if __name__ == "__main__":
    main()
