/* SPDX-License-Identifier: ISC */
/* The proof's behaviour: ties that light up, switches of units and yield, a
 * walk through the script by arrow keys. Without it the page still reads, and
 * its links lead from words to lines and back. */
(() => {
  "use strict";

  const all = (selector, inside = document) => [...inside.querySelectorAll(selector)];

  /* ---- ties ---- */

  let tied = null;

  /* Every element of a thing, by the thing's number. */
  const elements = () => {
    if (tied) return tied;
    tied = new Map();
    for (const e of all("[data-t]"))
      for (const t of e.dataset.t.split(" ")) {
        if (!tied.has(t)) tied.set(t, []);
        tied.get(t).push(e);
      }
    return tied;
  };

  let lit = [], pinned = null;

  const light = (from) => {
    for (const e of lit) e.classList.remove("lit");
    const at = from || pinned;
    lit = at ? at.dataset.t.split(" ").flatMap((t) => elements().get(t) || []) : [];
    for (const e of lit) e.classList.add("lit");
  };

  const owner = (e) => (e instanceof Element ? e.closest("[data-t]") : null);

  addEventListener("pointerover", (e) => light(owner(e.target)));
  addEventListener("focusin", (e) => light(owner(e.target)));
  addEventListener("focusout", () => light(null));
  document.documentElement.addEventListener("pointerleave", () => light(null));
  addEventListener("keydown", (e) => {
    if (e.key !== "Escape") return;
    pinned = null;
    light(null);
  });

  /* A link inside the page shows its end in the middle of its column, and
   * leaves both ends lit. */
  const show = (target, from) => {
    pinned = owner(target) || owner(from);
    target.scrollIntoView({ block: "center" });
    if (!target.matches("a, button, input, [tabindex]")) target.tabIndex = -1;
    target.focus({ preventScroll: true });
    light(null);
  };

  addEventListener("click", (e) => {
    const link = e.target instanceof Element && e.target.closest('a[href^="#"]');
    const target = link && document.getElementById(link.hash.slice(1));
    if (!target || target.matches("section")) return;
    e.preventDefault();
    show(target, link);
  });

  /* ---- the walk: the script is one stop of the Tab key, arrows go on ---- */

  const marks = all(".words a");
  let here = 0;

  const stop_at = (i) => {
    marks[here].tabIndex = -1;
    here = i;
    marks[here].tabIndex = 0;
  };

  for (const m of marks) m.tabIndex = -1;
  if (marks.length) stop_at(0);

  addEventListener("focusin", (e) => {
    const i = e.target.matches(".words a") ? marks.indexOf(e.target) : -1;
    if (i >= 0) stop_at(i);
  });
  addEventListener("keydown", (e) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[e.key];
    if (!e.target.matches(".words a") || e.altKey || e.ctrlKey || e.metaKey) return;
    let to = step ? here + step : -1;
    if (e.key === "Home") to = 0;
    if (e.key === "End") to = marks.length - 1;
    if (to < 0 || to >= marks.length) return;
    e.preventDefault();
    marks[to].focus();
  });

  /* ---- numbers, as base/print.c and write/equivalent.c print them ---- */

  const GLYPHS = [
    [0, ""], [1 / 8, "⅛"], [1 / 4, "¼"], [1 / 3, "⅓"], [3 / 8, "⅜"], [1 / 2, "½"],
    [5 / 8, "⅝"], [2 / 3, "⅔"], [3 / 4, "¾"], [7 / 8, "⅞"], [1, ""],
  ];

  /* Halves away from zero, and no 0.5 lost to binary. */
  const round = (v, step) => Math.floor(v / step + 0.5 + 1e-9) * step;
  const decimals = (v) => String(Math.round(v * 100 + 1e-7) / 100);

  const number = (v) => {
    const whole = Math.floor(v + 1e-9), part = v - whole;
    let best = GLYPHS[0];
    for (const g of GLYPHS)
      if (Math.abs(g[0] - part) < Math.abs(best[0] - part)) best = g;
    if (whole === 0 && best[0] === 0) return decimals(v);
    if (best[0] === 1) return String(whole + 1);
    return (whole || "") + best[1] || "0";
  };

  const range = ([min, max], print) => {
    const a = print(min), b = print(max);
    return a === b ? a : `${a}–${b}`;
  };
  const times = (r, by) => r.map((v) => v * by);
  const rounded = (r, step) => r.map((v) => round(v, step));
  const put = (r, one, many, print = number) =>
    r[0] > 0 ? `${range(r, print)} ${r[1] > 1 + 1e-9 ? many : one}` : "";

  /* ---- the same amount in other units ---- */

  const CUP = 236.5882365, OUNCE = 28.349523125;

  const cup_near = (v) => {
    const quarter = round(v, 1 / 4), third = round(v, 1 / 3);
    return Math.abs(third - v) < Math.abs(quarter - v) - 1e-12 ? third : quarter;
  };
  const far = (got, v) => Math.abs(got - v) * 50 > v * 3;

  const spoons = (cups) => {
    const tbsp = times(cups, 16);
    return tbsp[1] < 1
      ? put(rounded(times(cups, 48), 1 / 4), "tsp", "tsp")
      : put(rounded(tbsp, 1 / 4), "tbsp", "tbsp");
  };
  const cups_and_spoons = (v) => {
    const down = Math.floor(v * 4) / 4;
    const rest = round((v - down) * 16, 1 / 2);
    return `${put([down, down], "cup", "cups")} plus ${put([rest, rest], "tbsp", "tbsp")}`;
  };
  const us_volume = (ml) => {
    const cups = times(ml, 1 / CUP), near = cups.map(cup_near);
    if (ml[1] >= 3000) return put(rounded(times(cups, 1 / 4), 1 / 4), "quart", "quarts");
    if (ml[1] < 59 || (ml[1] < 118 && far(near[1], cups[1]))) return spoons(cups);
    if (cups[0] === cups[1] && far(near[1], cups[1])) return cups_and_spoons(cups[1]);
    return put(near, "cup", "cups");
  };
  const pounds = (oz) => {
    if (oz[0] !== oz[1]) return put(rounded(times(oz, 1 / 16), 1 / 4), "lb", "lb");
    const whole = round(oz[1], 1), rest = whole % 16;
    return `${Math.floor(whole / 16)} lb${rest ? ` ${rest} oz` : ""}`;
  };
  const us_mass = (g) => {
    const oz = times(g, 1 / OUNCE);
    if (g[0] < 20) return "";
    if (round(oz[1], 1) >= 16) return pounds(oz);
    return put(rounded(oz, oz[1] < 8 ? 1 / 4 : 1 / 2), "oz", "oz");
  };

  const METRIC = {
    mass: { small: "g", large: "kg", larges: "kg", fives: 250 },
    volume: { small: "ml", large: "litre", larges: "litres", fives: 1000 },
  };
  const metric = (base, kind) => {
    const m = METRIC[kind];
    const r = base.map((v) => round(v, v < 20 ? 1 : v < m.fives ? 5 : 10));
    if (r[0] <= 0) return "";
    if (r[0] < 1000) return `${range(r, decimals)} ${m.small}`;
    const large = times(r, 1 / 1000);
    return `${range(large, decimals)} ${large[1] > 1 ? m.larges : m.large}`;
  };

  /* ---- an amount ---- */

  const fraction = (s) => {
    const [a, b] = s.split("/");
    return b ? a / b : Number(a);
  };

  const read = (e) => {
    const d = e.dataset;
    if (!d.n) return null;
    const [kind, per] = (d.b || "").split(" ");
    const [known_kind, ...known] = (d.k || "").split(" ");
    return {
      n: d.n.split(" ").map(fraction),
      unit: d.u || "",
      words: (d.w || "|").split("|"),
      is_metric: "m" in d,
      kind: kind || null,
      per: Number(per),
      known: known.length ? { kind: known_kind, n: known.map(Number) } : null,
    };
  };

  /* In the unit that was said, or the next one where there is too much of it. */
  const as_said = (q, by) => {
    const n = times(q.n, by), over = (v) => n[0] >= v;
    if (q.unit === "gram" && over(1000)) return `${range(times(n, 1 / 1000), decimals)} kg`;
    if (q.unit === "millilitre" && over(1000))
      return put(times(n, 1 / 1000), "litre", "litres", decimals);
    if (q.unit === "teaspoon" && over(3) && n.every((v) => Math.abs(round(v, 1.5) - v) < 1e-9))
      return put(times(n, 1 / 3), "tbsp", "tbsp");
    if (q.unit === "ounce" && over(16)) return pounds(n);
    const text = range(n, q.is_metric ? decimals : number);
    const word = q.words[n[1] > 1 + 1e-9 ? 1 : 0];
    return word ? `${text} ${word}` : text;
  };

  /* What equivalent_put() puts: nothing for spoons and counts. */
  const other = (q, by) => {
    const known = q.known && metric(times(q.known.n, by), q.known.kind);
    if (!q.kind) return q.unit === "stick" ? known || "" : "";
    const base = times(times(q.n, q.per), by);
    if (q.is_metric) return q.kind === "volume" ? us_volume(base) : us_mass(base);
    if (q.kind === "mass") return metric(base, "mass");
    return base[1] >= 59 ? known || "" : "";
  };

  const units = () => document.querySelector(".units input:checked").value;

  /* The text of an amount, and the one in brackets behind it; as_written is
   * what the program wrote. */
  const print = (q, by, system, as_written) => {
    const said = by === 1 ? as_written : as_said(q, by), also = other(q, by);
    const wanted = system === "metric" ? !q.is_metric : q.is_metric;
    if (system === "said") return [said, also];
    return wanted && also ? [also, ""] : [said, ""];
  };

  /* ---- the switches ---- */

  const told = document.getElementById("told");

  const factor = (recipe) => {
    const scale = recipe.querySelector(".scale");
    const value = Number(scale.querySelector("input").value);
    return value > 0 ? value / Number(scale.dataset.from) : 1;
  };

  const recalculate = (recipe) => {
    const by = factor(recipe), system = units();
    for (const e of all(".q", recipe)) {
      const q = read(e), behind = e.closest("li").querySelector(".other");
      const mine = behind && behind.dataset.of !== "done" && !e.closest(".method");
      if (e.dataset.text === undefined) {
        e.dataset.text = e.textContent;
        if (mine) behind.dataset.text = behind.textContent;
      }
      if (!q) continue;
      const first = e === e.closest("li").querySelector(".q");
      const [text, also] = print(q, by, system, e.dataset.text);
      const original = by === 1 && system === "said";
      e.textContent = original ? e.dataset.text : text;
      if (!mine || !first) continue;
      behind.textContent = original ? behind.dataset.text : also && ` (${also})`;
    }
    for (const e of all(".yield", recipe)) rescale_yield(e, by);
  };

  /* "Serves 4–6": every number in it. */
  const rescale_yield = (e, by) => {
    const at = e.querySelector("a") || e;
    if (at.dataset.text === undefined) at.dataset.text = at.textContent;
    at.textContent =
      by === 1 ? at.dataset.text : at.dataset.text.replace(/\d+(\.\d+)?/g, (n) => number(n * by));
  };

  const recipes = all(".recipe");

  for (const recipe of recipes) {
    const scale = recipe.querySelector(".scale");
    const input = scale.querySelector("input");
    const move = (by) => {
      const to = Math.round(Number(input.value) || 1) + by;
      if (to < 1 || to > 99) return;
      input.value = to;
      change();
    };
    const change = () => {
      recalculate(recipe);
      told.textContent = `Recalculated for ${input.value}`;
    };
    scale.hidden = false;
    scale.querySelector(".less").addEventListener("click", () => move(-1));
    scale.querySelector(".more").addEventListener("click", () => move(1));
    input.addEventListener("input", change);
  }

  const switch_units = () => {
    document.body.classList.remove("units-metric", "units-us");
    if (units() !== "said") document.body.classList.add(`units-${units()}`);
    recipes.forEach(recalculate);
    told.textContent = "Units changed";
  };

  document.querySelector(".units").hidden = false;
  for (const e of all(".units input")) e.addEventListener("change", switch_units);
  if (units() !== "said") switch_units();
  document.documentElement.dataset.ready = "";
})();
