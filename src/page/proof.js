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

  /* ---- the switches: the program wrote every line in each way, and an
   * element's data-i tells which of its texts is meant ---- */

  const TIMES = 6;
  const told = document.getElementById("told");
  const units = () => Number(document.querySelector(".units input:checked").value);

  const rewrite = (recipe) => {
    const variant = units() * TIMES + Number(recipe.querySelector(".scale select").value);
    for (const e of all("[data-v]", recipe)) {
      const which = e.dataset.i.charCodeAt(variant) - "a".charCodeAt(0);
      e.textContent = e.dataset.v.split("\n")[which];
    }
  };

  const recipes = all(".recipe");

  for (const recipe of recipes) {
    recipe.querySelector(".scale").hidden = false;
    recipe.querySelector(".scale select").addEventListener("change", (e) => {
      rewrite(recipe);
      told.textContent = `Amounts for ${e.target.selectedOptions[0].textContent}`;
    });
  }
  for (const e of all(".units input"))
    e.addEventListener("change", () => {
      recipes.forEach(rewrite);
      told.textContent = "Units changed";
    });

  document.querySelector(".units").hidden = false;
  /* A browser that goes back keeps what was chosen. */
  recipes.forEach(rewrite);
  document.documentElement.dataset.ready = "";
})();
