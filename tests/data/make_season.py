# Oracle cases for movement and mixed_model (docs/method.md M, J).  python3 make_season.py [folder]
# Needs python3-numpy python3-scipy (Debian 12). Written apart from the program: the movement by maximising the exact
# likelihood at every place with scipy.optimize, no neighbourhood, no EM; the mixed model by
# dense matrices with the observed information in closed form (V is linear in the two variances).
import json, math, os, sys
import numpy as np, scipy
from scipy import optimize, stats
out = sys.argv[1] if len(sys.argv) > 1 else os.path.join(os.path.dirname(os.path.abspath(__file__)), "method")
TOOL = "Python 3.11, numpy " + np.__version__ + ", scipy " + scipy.__version__
EPS, RANGE = 0.01, 10.0


def loglik(L, U, mean, s):
    exact = L == U
    a, b = (L - mean) / s, (U - mean) / s
    flip = a > 0
    p = np.where(flip, stats.norm.sf(a) - stats.norm.sf(b), stats.norm.cdf(b) - stats.norm.cdf(a))
    p = np.where(exact, stats.norm.pdf(a) / s, p)
    wild = np.where(exact, 1 / RANGE, np.minimum(1, (U - L) / RANGE))
    return float(np.log((1 - EPS) * p + EPS * wild).sum())


def fitted(L, U, X, floor):
    y = (L + U) / 2
    keep = np.ones(len(y), bool)
    for sweep in range(3):
        b = np.linalg.lstsq(X[keep], y[keep], rcond=None)[0]
        s = max(floor * 1.05, np.sqrt(np.mean((y[keep] - X[keep] @ b) ** 2)))
        keep = np.abs(y - X @ b) < 5 * s
    f = lambda v: -loglik(L, U, X @ v[:-1], max(floor, math.exp(v[-1])))
    best = optimize.minimize(f, np.r_[b, math.log(s)], method="BFGS", options={"gtol": 1e-6})
    best = optimize.minimize(f, best.x, method="Nelder-Mead", options={"xatol": 1e-7, "fatol": 1e-8, "maxiter": 400})
    return -best.fun, best.x[:-1], max(floor, math.exp(best.x[-1]))


def movement(i):
    L, U = np.array(i["readings"], float).T
    t = np.array([0 if r is None else r for r in i["rigging"]], float)
    n = len(t); widths = np.sort(U - L); D = float(np.median(widths)); floor = max(0.005, D / 4)
    rig = [k for k in range(n) if t[k] > 0]; one = np.ones(n); logN = math.log(n)
    logs = {"steady": math.log(0.9) + fitted(L, U, one[:, None], floor)[0] - logN}
    told = {}
    for kind in ("step", "drift"):
        first = rig[0] + (4 if kind == "step" else 3)
        last = n - (3 if kind == "step" else 4)
        ks, ll, sizes = [], [], []
        for k in range(first, last + 1):
            shape = (np.arange(n) >= k) * 1.0 if kind == "step" else np.maximum(0, t - t[k]) / 100
            l, b, s = fitted(L, U, np.c_[one, shape], floor)
            ks.append(t[k]); ll.append(l); sizes.append(b[1])
        ll = np.array(ll); top = ll.max(); p = np.exp(ll - top)
        logs[kind] = math.log(0.05) + top + math.log(p.mean()) - 1.5 * logN
        p /= p.sum(); order = np.argsort(-p, kind="stable"); held, kept = 0, []
        for j in order:
            held += p[j]; kept.append(ks[j])
            if held >= 0.95: break
        told[kind] = {"at": ks[int(np.argmax(p))], "at_set": sorted(kept), "mean_size": float((p * np.array(sizes)).sum())}
    top = max(logs.values()); z = sum(math.exp(v - top) for v in logs.values())
    chance = {k: math.exp(v - top) / z for k, v in logs.items()}
    return {"n": n, "chance": chance, "likeliest": max(chance, key=chance.get), "step": told["step"], "drift": told["drift"]}


def mixed(i):
    y = np.array(i["y"]); X = np.array(i["columns"]).T; w = np.array(i.get("weight", [1] * len(y)), float)
    names = sorted(set(i["group"])); Z = np.array([[g == k for k in names] for g in i["group"]], float)
    n, p = X.shape; V1, V2 = Z @ Z.T, np.diag(1 / w)
    def parts(tau, s):
        V = tau * V1 + s * V2; W = np.linalg.inv(V); A = X.T @ W @ X; C = np.linalg.inv(A); P = W - W @ X @ C @ X.T @ W
        ll = -0.5 * ((n - p) * math.log(2 * math.pi) + np.linalg.slogdet(V)[1] + np.linalg.slogdet(A)[1] + y @ P @ y)
        return W, C, P, ll
    f = lambda v: -parts(math.exp(v[0]), math.exp(v[1]))[3]
    best = min((optimize.minimize(f, [math.log(np.var(y) * a), math.log(np.var(y))], method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 20000}) for a in (1e-3, 0.1, 1, 10)), key=lambda r: r.fun)
    tau, s = math.exp(best.x[0]), math.exp(best.x[1])
    zero = optimize.minimize_scalar(lambda v: -parts(0.0, math.exp(v))[3], bounds=(best.x[1] - 5, best.x[1] + 5), method="bounded", options={"xatol": 1e-12})
    if zero.fun <= best.fun + 1e-9:
        tau, s = 0.0, math.exp(zero.x)
    W, C, P, ll = parts(tau, s)
    info = lambda A, B: -0.5 * np.trace(P @ A @ P @ B) + y @ P @ A @ P @ B @ P @ y
    H = np.array([[info(V1, V1), info(V1, V2)], [info(V2, V1), info(V2, V2)]])
    cov = np.linalg.inv(H) if tau > 0 else np.array([[0, 0], [0, 1 / H[1, 1]]])
    beta = C @ X.T @ W @ y
    def one(c):
        c = np.array(c, float); v = c @ C @ c; g = np.array([c @ C @ X.T @ W @ A @ W @ X @ C @ c for A in (V1, V2)])
        return {"estimate": float(c @ beta), "se": math.sqrt(v), "df": float(2 * v * v / (g @ cov @ g))}
    return {"var_group": tau, "var_residual": s, "loglik_reml": float(ll), "effects": [one(row) for row in np.eye(p)], "contrasts": [one(c) for c in i.get("contrasts", [])]}


def told(seed, n, step, sigma, moved, wild=()):
    r = np.random.default_rng(seed); t = [None] * 6 + list(range(1, n + 1)); x = []
    for k in t:
        x.append(0.6 + sigma * r.standard_normal() + moved(k or 0))
    for k, v in wild: x[k] = v
    pairs = [[round(math.floor(v / step + 1e-9) * step, 6), round((math.floor(v / step + 1e-9) + 1) * step, 6)] if step else [v, v] for v in x]
    return {"readings": pairs, "rigging": t}


def write(kind, f, cases, tol, note):
    folder = out.replace("method", "season") if kind == "movement" else out
    json.dump({"kind": kind, "units": "mm", "computed_with": TOOL, "note": note, "tolerance": tol, "cases": [{"id": k, "input": i, "expected": f(i)} for k, i in cases]},
              open(f"{folder}/{kind}.json", "w"), indent=1, allow_nan=False)


def table(seed, sizes, groupsd, weights):
    r = np.random.default_rng(seed); y, g, a, b, w = [], [], [], [], []
    for d, m in enumerate(sizes):
        e = groupsd * r.standard_normal()
        for k in range(m):
            person, gauge = (d % 3 == 0) * 1.0, float(r.random() < 0.4)
            weight = r.uniform(0.5, 3) if weights else 1.0
            y.append(0.1 + 0.05 * person - 0.03 * gauge + e + 0.04 * r.standard_normal() / math.sqrt(weight)); g.append(f"d{d}"); a.append(person); b.append(gauge); w.append(weight)
    i = {"y": y, "group": g, "columns": [[1.0] * len(y), a, b], "contrasts": [[0, 0.7, 0], [1, 0.3, 0.4]]}
    if weights: i["weight"] = w
    return i


step = lambda at, size: lambda k: size * (k >= at)
drift = lambda at, rate: lambda k: rate / 100 * max(0, k - at)
M = [("step_fine", told(2, 26, 0.01, 0.02, step(14, 0.08))),
     ("small_step_exact", told(3, 26, 0, 0.02, step(15, 0.035))), ("drift_fine", told(4, 30, 0.01, 0.02, drift(12, 0.5))),
     ("step_middling_wild", told(5, 26, 0.02, 0.015, step(13, 0.06), ((10, 1.31), (26, 0.22)))), ("step_coarse", told(6, 26, 0.05, 0.02, step(14, 0.1)))]
write("movement", movement, M, {"chance_abs": 0.01, "size_mm": 3e-4, "rate_mm": 5e-3},
      "exact likelihood, every place; second changes are left to other tests: chances are those without one")
X = [("unbalanced", table(11, [3, 5, 2, 7, 4, 4, 6, 3, 5], 0.05, False)), ("weighted", table(12, [8, 6, 8, 8, 5, 8, 7, 8, 8, 3], 0.03, True)), ("no_group_variance", table(13, [6, 5, 6, 7, 6, 6], 0.0, True))]
write("mixed_model", mixed, X, {"rel": 1e-6, "df_rel": 1e-4, "small": 1e-9}, "restricted maximum likelihood; Satterthwaite with the observed information")
